using System.Globalization;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms.GameBoy;

/// <summary>A finished Game Boy ROM as the checks see it.</summary>
internal sealed class GameBoyCart(CartView cart, FindingLog log)
{
    public RegionImage Image { get; } = cart.Rom[GameBoyHeader.Region]!;

    public ReadOnlySpan<byte> Rom => Image.Bytes.Span;

    public int Type => Value("cartridgeType");

    public string Title => cart["title"] ?? "";

    // RAM as the header states it; what has no name counts as none.
    public long SaveRam => Manifests.ByteSize.TryParse(cart["saveRam"] ?? "0", out var size) ? size : 0;

    public bool HasColor => Field("cgbFlag") is { } flag && flag.Raw[0] >= 0x80;

    // The MMM01 shows the end of the ROM after power-on, everything else its start.
    public int BootWindow => CartridgeTypes.Find((byte)Type)?.Controller == BankControllers.Mmm01 ? Rom.Length - GameBoyHeader.Window : 0;

    public HeaderEntry? Field(string name) =>
        cart.Headers.SelectMany(static header => header.Entries).FirstOrDefault(entry => entry.Field.Name == name);

    public int Value(string field) => Field(field)!.Raw[0];

    public void Add(FindingRule rule, string field, string message, string? expected = null) => log.Add(rule, cart.Place("header:" + field), message, expected);

    public void AddByte(FindingRule rule, string field, string meaning) =>
        Add(rule, field, string.Create(CultureInfo.InvariantCulture, $"`{field}` is 0x{Value(field):X2} ({Value(field)}): {meaning}."));

    /// <summary>Whether a program covers any byte.</summary>
    public bool Covered(long offset, long length) => Image.CoveringSegment(offset, length) is not null;

    /// <summary>The header of the 32 KiB that begin at an offset.</summary>
    public ReadOnlySpan<byte> Header(int window) => Rom.Slice(window + GameBoyHeader.Start, GameBoyHeader.Length);

    /// <summary>What the programs hold in a range, and the fill between them, before any header was written.</summary>
    public byte[] Before(int offset, int length)
    {
        var bytes = new byte[length];
        bytes.AsSpan().Fill(Image.Fill);
        foreach (var segment in Image.Coverage)
        {
            var first = Math.Max(segment.Offset, offset);
            var end = Math.Min(segment.End, offset + length);
            if (first < end)
            {
                segment.Bytes.Span[(int)(first - segment.Offset)..(int)(end - segment.Offset)].CopyTo(bytes.AsSpan((int)(first - offset)));
            }
        }

        return bytes;
    }
}
