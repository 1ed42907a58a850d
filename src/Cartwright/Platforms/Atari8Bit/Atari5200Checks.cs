using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>Checks of a finished cart.</summary>
/// <param name="cart">The cart.</param>
/// <param name="region">Its ROM.</param>
/// <param name="scheme">Its scheme.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class Atari5200Checks(CartView cart, RegionImage region, ConsoleScheme scheme, FindingLog log)
{
    private const int Several = 4;

    private ReadOnlySpan<byte> Trailer => region.Bytes.Span[^ConsoleTrailer.Length..];

    /// <summary>Runs them all.</summary>
    public void Run()
    {
        CheckStart();
        CheckTitle();
        CheckChips();
    }

    private void CheckStart()
    {
        var start = cart[ConsoleTrailer.Start] is { } text && Number.TryParse(text, out long value) ? (int)value : 0;
        if (start is 0 or 0xFFFF)
        {
            return;
        }

        var says = string.Create(CultureInfo.InvariantCulture, $"The start address at $BFFE, offset 0x{region.Length - 2:X6} of the ROM, is ${start:X4}");
        if (start is < 0x4000 or >= 0xC000)
        {
            log.Add(Atari5200Findings.StartOutside, cart.Place("header:" + ConsoleTrailer.Start), says + ".");
            return;
        }

        var place = cart.Layout.Addresses.Locate(new ConsoleAddress(null, start), _ => region.Length);
        if (place.Region is not null && region.CoveringSegment(place.Offset + region.Length, 1) is null)
        {
            log.Add(Atari5200Findings.StartUncovered, cart.Place("header:" + ConsoleTrailer.Start), $"{says}, and no program covers offset 0x{place.Offset + region.Length:X6} where that is.");
        }
    }

    private void CheckTitle()
    {
        var title = Trailer.Slice(ConsoleTrailer.TitleAt, ConsoleTrailer.TitleLength);
        var year = Trailer.Slice(ConsoleTrailer.YearAt, 2);
        if (LooksLikeAscii(title))
        {
            log.Add(Atari5200Findings.TitleAscii, cart.Place("header:" + ConsoleTrailer.Title), $"The title's bytes are {Convert.ToHexString(title)}: in ASCII `{System.Text.Encoding.ASCII.GetString(title).TrimEnd(' ', '\0')}`, on the screen `{cart[ConsoleTrailer.Title]}`.");
        }

        if (!YearCodec.Skips(year) && !YearCodec.IsYear(year))
        {
            log.Add(Atari5200Findings.YearNotDigits, cart.Place("header:" + ConsoleTrailer.Year), $"The bytes at $BFFC are {Convert.ToHexString(year)}; digits are 0x50 to 0x59.");
        }

        if (YearCodec.Skips(year) && title.ContainsAnyExcept((byte)0, region.Fill))
        {
            log.Add(Atari5200Findings.TitleNotShown, cart.Place("header:" + ConsoleTrailer.Year), $"There is a title, `{cart[ConsoleTrailer.Title]}`, and no year.");
        }
    }

    // Capital letters of ASCII are digits and marks of the second colour, which hardly any title is made of.
    private static bool LooksLikeAscii(ReadOnlySpan<byte> title)
    {
        var text = title.TrimEnd((byte)0);
        var letters = 0;
        foreach (var value in text)
        {
            letters += value is >= (byte)'A' and <= (byte)'Z' ? 1 : 0;
        }

        return text.IndexOfAnyExceptInRange((byte)' ', (byte)'Z') < 0 && letters >= 3 && letters * 2 > text.TrimEnd((byte)' ').Length;
    }

    // By the targets of jumps: code that runs both below $6000 and from $8000 on is for two chips.
    private void CheckChips()
    {
        if (region.Length != 0x4000)
        {
            return;
        }

        var low = Jumps(0x4000, 0x6000);
        var (middle, high) = (Jumps(0x8000, 0xA000), Jumps(0xA000, 0xC000));
        if (scheme.Name == ConsoleScheme.Plain && low >= Several && middle + high >= Several)
        {
            Tell($"The scheme is {scheme.Name}, and {low} jumps lead to $4000-$5FFF and {middle + high} to $8000-$BFFF, as in two chips.");
        }
        else if (scheme.Name == ConsoleScheme.TwoChip && low + Jumps(0x6000, 0x8000) == 0 && middle >= Several && high >= Several)
        {
            Tell($"The scheme is {scheme.Name}, and {middle} jumps lead to $8000-$9FFF, {high} to $A000-$BFFF and none below, as in one chip.");
        }
    }

    private void Tell(FormattableString message) =>
        log.Add(Atari5200Findings.OneOrTwoChips, cart.Place("header:scheme"), message.ToString(CultureInfo.InvariantCulture));

    private int Jumps(int from, int end)
    {
        var bytes = region.Bytes.Span;
        var count = 0;
        for (var i = 0; i + 2 < bytes.Length; i++)
        {
            // JSR and JMP.
            count += bytes[i] is 0x20 or 0x4C && BinaryPrimitives.ReadUInt16LittleEndian(bytes[(i + 1)..]) is var target && target >= from && target < end ? 1 : 0;
        }

        return count;
    }
}
