using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Save memory as the header's block of twelve bytes describes it (ROM Cartridge Data).</summary>
/// <param name="Kind">What keeps the progress.</param>
/// <param name="Lane">Which bytes of the bus it answers on.</param>
/// <param name="Start">First address as the block holds it.</param>
/// <param name="End">Last address as the block holds it.</param>
internal sealed record SaveMemory(SaveKind Kind, SaveLane Lane, uint Start, uint End)
{
    /// <summary>Bytes of the block.</summary>
    public const int BlockLength = 12;

    /// <summary>Where save memory begins unless another address is stated.</summary>
    public const uint UsualStart = 0x200000;

    /// <summary>The byte after the cartridge's address space.</summary>
    public const uint SpaceEnd = 0x400000;

    private const byte RamSubtype = 0x20;

    // The type of a serial EEPROM and its subtype are known from memory.
    private const byte EepromSubtype = 0x40;
    private const byte EepromType = 0xE8;

    /// <summary>First address on the lane.</summary>
    public uint LaneStart => ForceOnto(Lane, Start);

    /// <summary>Last address on the lane.</summary>
    public uint LaneEnd => ForceOnto(Lane, End);

    /// <summary>True when both addresses lie on the lane and in order, inside the cartridge's space.</summary>
    public bool InSpace => Start <= End && End < SpaceEnd;

    /// <summary>Bytes of the chip; 0 or less when the addresses are out of order.</summary>
    public long Size => Lane == SaveLane.Word ? (long)End - Start + 1 : (((long)LaneEnd - LaneStart) / 2) + 1;

    /// <summary>The same memory with start and end forced onto its lane.</summary>
    public SaveMemory OnLane => this with { Start = LaneStart, End = LaneEnd };

    /// <summary>An address forced onto a lane.</summary>
    /// <param name="lane">The lane.</param>
    /// <param name="address">The address.</param>
    public static uint ForceOnto(SaveLane lane, uint address) => lane switch
    {
        SaveLane.Odd => address | 1,
        SaveLane.Even => address & ~1U,
        _ => address,
    };

    /// <summary>Reads a block; null when it declares no save memory, or none that is known.</summary>
    /// <param name="block">The twelve bytes.</param>
    public static SaveMemory? FromBlock(ReadOnlySpan<byte> block)
    {
        var start = BinaryPrimitives.ReadUInt32BigEndian(block[4..]);
        var end = BinaryPrimitives.ReadUInt32BigEndian(block[8..]);
        if (block.StartsWith("FL"u8))
        {
            return new SaveMemory(SaveKind.Flash, SaveLane.Word, start, end);
        }

        return !block.StartsWith("RA"u8) ? null : (block[2], block[3]) switch
        {
            (EepromType, EepromSubtype) => new SaveMemory(SaveKind.Eeprom, SaveLane.Odd, start, end),
            (0xA0 or 0xB0 or 0xB8, RamSubtype) => new SaveMemory(SaveKind.Volatile, (SaveLane)((block[2] >> 3) & 3), start, end),
            (0xE0 or 0xF0 or 0xF8, RamSubtype) => new SaveMemory(SaveKind.Battery, (SaveLane)((block[2] >> 3) & 3), start, end),
            _ => null,
        };
    }

    /// <summary>Writes the block.</summary>
    /// <param name="block">The twelve bytes.</param>
    public void WriteTo(Span<byte> block)
    {
        (Kind == SaveKind.Flash ? "FL"u8 : "RA"u8).CopyTo(block);
        (block[2], block[3]) = Kind switch
        {
            SaveKind.Flash => ((byte)0, RamSubtype),
            SaveKind.Eeprom => (EepromType, EepromSubtype),
            _ => ((byte)(0xA0 | (Kind == SaveKind.Battery ? 0x40 : 0) | ((int)Lane << 3)), RamSubtype),
        };
        BinaryPrimitives.WriteUInt32BigEndian(block[4..], Start);
        BinaryPrimitives.WriteUInt32BigEndian(block[8..], End);
    }

    /// <summary>The memory in words: <c>8KiB battery odd</c>, <c>eeprom</c>, <c>128KiB flash at $3D0000</c>.</summary>
    public override string ToString()
    {
        var usual = ForceOnto(Lane, UsualStart);
        var at = Start == usual ? "" : string.Create(CultureInfo.InvariantCulture, $" at ${Start:X6}");
        return Kind switch
        {
            SaveKind.Eeprom => "eeprom" + at,
            SaveKind.Flash => $"{ByteSize.Format(Size)} flash{at}",
            _ => $"{ByteSize.Format(Size)} {(Kind == SaveKind.Battery ? "battery" : "volatile")} {Lane.ToString().ToLowerInvariant()}{at}",
        };
    }
}
