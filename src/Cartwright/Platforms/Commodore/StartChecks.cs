using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>Checks of where a finished ROM starts.</summary>
/// <param name="cart">The ROM.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class StartChecks(CartView cart, FindingLog log)
{
    private readonly RegionImage _region = cart.Rom[CommodoreMapping.Region]!;

    /// <summary>Checks the header of the C64 and the VIC-20.</summary>
    /// <param name="start">The address of the header.</param>
    /// <param name="offset">Its offset in the ROM.</param>
    /// <param name="mark">The machine's mark.</param>
    public void CheckHeader(int start, int offset, ReadOnlySpan<byte> mark)
    {
        var held = Entry("mark");
        if (!held.Raw.AsSpan().SequenceEqual(mark))
        {
            CheckMark(held, offset, mark);
            return;
        }

        CheckColdStart(start, StartHeader.Length);
        CheckWarmStart();
    }

    /// <summary>Checks where the machine jumps at power-on.</summary>
    /// <param name="start">The address of the header.</param>
    /// <param name="length">Bytes of the header.</param>
    public void CheckColdStart(int start, int length)
    {
        var cold = Address("coldStart");
        if (IsMissing("coldStart"))
        {
            return;
        }

        if (!IsShown(cold))
        {
            Add(CommodoreFindings.ColdStartElsewhere, "coldStart", $"The cold start is {Hex(cold)}, and the cartridge is not seen there.");
        }
        else if (!HoldsProgram(cold))
        {
            Add(CommodoreFindings.ColdStartNowhere, "coldStart", $"The cold start is {Hex(cold)}, and no program is there.");
        }
        else if (cold >= start && cold < start + length)
        {
            Add(CommodoreFindings.StartInHeader, "coldStart", $"The cold start is {Hex(cold)}, and the header ends at {Hex(start + length - 1)}.");
        }
    }

    /// <summary>Checks where the RESTORE key leads.</summary>
    public void CheckWarmStart()
    {
        // Elsewhere a handler may be by then.
        if (Address("warmStart") is var warm && IsShown(warm) && !HoldsProgram(warm))
        {
            Add(CommodoreFindings.WarmStartNowhere, "warmStart", $"The warm start is {Hex(warm)}, and no program is there.");
        }
    }

    /// <summary>Checks the processor's vectors.</summary>
    public void CheckVectors()
    {
        var reset = Address("reset");
        if (!IsMissing("reset") && !HoldsProgram(reset))
        {
            Add(CommodoreFindings.ResetNowhere, "reset", $"The reset vector is {Hex(reset)}, and no program is there.");
        }

        foreach (var name in new[] { "nmi", "irq" })
        {
            if (Address(name) is var handler && IsShown(handler) && !HoldsProgram(handler))
            {
                Add(CommodoreFindings.HandlerNowhere, name, $"The vector `{name}` is {Hex(handler)}, and no program is there.");
            }
        }
    }

    /// <summary>Whether a program holds the byte an address shows.</summary>
    /// <param name="address">The address.</param>
    public bool HoldsProgram(int address) =>
        // A ROM smaller than its window is seen again and again.
        Locate(address) is { Region: not null } place && _region.CoveringSegment(((place.Offset % _region.Length) + _region.Length) % _region.Length, 1) is not null;

    /// <summary>Whether the cartridge is seen at an address.</summary>
    /// <param name="address">The address.</param>
    public bool IsShown(int address) => Locate(address).Region is not null;

    /// <summary>An address the header holds.</summary>
    /// <param name="field">The field's name.</param>
    public int Address(string field) => BinaryPrimitives.ReadUInt16LittleEndian(Entry(field).Raw.AsSpan());

    /// <summary>A field of the headers.</summary>
    /// <param name="field">The field's name.</param>
    public HeaderEntry Entry(string field) => cart.Headers.SelectMany(static header => header.Entries).First(entry => entry.Field.Name == field);

    /// <summary>Adds a finding about a field.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="field">The field's name.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="expected">What was expected.</param>
    public void Add(FindingRule rule, string field, string message, string? expected = null) => log.Add(rule, cart.Place("header:" + field), message, expected);

    /// <summary>An address as it is written.</summary>
    /// <param name="address">The address.</param>
    public static string Hex(int address) => string.Create(CultureInfo.InvariantCulture, $"${address:X4}");

    // That it is missing has been said.
    private bool IsMissing(string field) => Entry(field) is { Origin: EntryOrigin.Image } entry && entry.Field.Codec.IsBlank(entry.Raw.AsSpan(), _region.Fill);

    private void CheckMark(HeaderEntry held, int offset, ReadOnlySpan<byte> mark)
    {
        var digits = Convert.ToHexString(held.Raw.AsSpan());
        if (held.Origin == EntryOrigin.Manifest)
        {
            Add(CommodoreFindings.ByHand, "mark", $"In place of the mark there is {digits}, as stated.");
        }
        else if (_region.Bytes.Span.IndexOf(mark) is var at and >= 0 && at % CommodoreMapping.WindowSize == StartHeader.MarkAt && at < 2 * CommodoreMapping.WindowSize)
        {
            Add(CommodoreFindings.HalvesSwapped, "mark", string.Create(CultureInfo.InvariantCulture, $"The mark belongs at 0x{offset + StartHeader.MarkAt:X4}, and it lies at 0x{at:X4}."));
        }
        else
        {
            Add(CommodoreFindings.NoMark, "mark", string.Create(CultureInfo.InvariantCulture, $"At 0x{offset + StartHeader.MarkAt:X4}, where the mark belongs, there is {digits}."), Convert.ToHexString(mark));
        }
    }

    private AddressPlace Locate(int address) => cart.Layout.Addresses.Locate(new ConsoleAddress(null, address), static _ => null);
}
