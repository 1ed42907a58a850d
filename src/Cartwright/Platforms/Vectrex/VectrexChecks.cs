using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Vectrex;

/// <summary>Checks of a finished ROM.</summary>
/// <param name="cart">The ROM.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class VectrexChecks(CartView cart, FindingLog log)
{
    private const int Bios = 0xE000;

    private readonly RegionImage _region = cart.Rom[VectrexHeader.Region]!;

    // The half seen at power-on begins where its header does.
    private readonly int _base = cart.Headers[0].Entries[0].Offset;

    private ReadOnlySpan<byte> Seen => _region.Bytes.Span.Slice(_base, Math.Min(VectrexHeader.Window, _region.Length - _base));

    public void Run()
    {
        if (!Seen.StartsWith(CopyrightCodec.Mark))
        {
            Add(VectrexFindings.NoMark, "year", $"The ROM begins with {Convert.ToHexString(Seen[..CopyrightCodec.Mark.Length])}.", Convert.ToHexString(CopyrightCodec.Mark));
            return;
        }

        CheckOtherHalf();
        if (!CopyrightCodec.IsUsual(Seen))
        {
            Add(VectrexFindings.CopyrightForm, "year", $"The ROM begins with {Convert.ToHexString(Seen[..CopyrightCodec.Length])}.");
            return;
        }

        CheckMusic();
        CheckTitles();
    }

    private void CheckMusic()
    {
        var music = BinaryPrimitives.ReadUInt16BigEndian(Seen[VectrexHeader.Music..]);
        if (music < Bios && (music >= Seen.Length || !HoldsProgram(music)))
        {
            Add(VectrexFindings.NoMusic, "music", string.Create(CultureInfo.InvariantCulture, $"The music is at ${music:X4}, where neither the BIOS nor a program is."));
        }
    }

    private void CheckTitles()
    {
        var texts = new List<TitleText>();
        if (TitleTexts.Read(Seen[VectrexHeader.Titles..], texts) is not { } length)
        {
            Add(VectrexFindings.NoEnd, "titles", "The texts from $000D on do not end in 80, or are not followed by 00.");
            return;
        }

        foreach (var text in texts.Where(static text => !TitleTexts.CanBeDrawn(text.Text)))
        {
            Add(VectrexFindings.NoLetter, "titles", $"The header has the text `{text.Text}`.");
        }

        var code = VectrexHeader.Titles + length;
        if (code >= Seen.Length || !HoldsProgram(code))
        {
            Add(VectrexFindings.NoCode, "titles", string.Create(CultureInfo.InvariantCulture, $"The header ends at ${code - 1:X4}, and no program covers ${code:X4}."));
        }
        else if (BinaryPrimitives.ReadUInt16BigEndian(Seen[Math.Min(code, Seen.Length - 2)..]) is 0 or 0xFFFF)
        {
            Add(VectrexFindings.BlankCode, "titles", string.Create(CultureInfo.InvariantCulture, $"The header ends at ${code - 1:X4}, and blank bytes follow."));
        }
    }

    private void CheckOtherHalf()
    {
        if (_region.Length > VectrexHeader.Window && !_region.Bytes.Span[(VectrexHeader.Window - _base)..].StartsWith(CopyrightCodec.Mark))
        {
            Add(VectrexFindings.OtherHalf, "mapper", $"The {(_base == 0 ? "upper" : "lower")} half does not begin with `g GCE`.");
        }
    }

    private bool HoldsProgram(int address) => _region.CoveringSegment(_base + address, 1) is not null;

    private void Add(FindingRule rule, string field, string message, string? expected = null) => log.Add(rule, cart.Place("header:" + field), message, expected);
}
