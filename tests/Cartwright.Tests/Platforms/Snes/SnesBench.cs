using System.Buffers.Binary;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Snes;

namespace Cartwright.Tests.Platforms.Snes;

/// <summary>Small SNES programs that nothing is wrong with, for tests to build as they are or to spoil.</summary>
internal static class SnesBench
{
    private const byte Sei = 0x78;

    /// <summary>The bytes of bank $00: noise, room for the header, all vectors at $8000, and SEI there.</summary>
    public static byte[] Bank(SnesMapping mapping)
    {
        var bank = TestBytes.L(mapping.BankSize);
        bank.AsSpan(At(mapping, 0xFFB0), SnesMapping.HeaderLength).Clear();
        for (var vector = 0xFFE0; vector <= 0xFFFE; vector += 2)
            SetWord(bank, mapping, vector, vector < 0xFFE4 ? 0 : 0x8000);

        bank[At(mapping, 0x8000)] = Sei;
        return bank;
    }

    /// <summary>A bench with that bank in its place, spoilt by <paramref name="spoil"/>.</summary>
    public static RomBench Clean(SnesMapping mapping, Action<byte[]>? spoil = null)
    {
        var bank = Bank(mapping);
        spoil?.Invoke(bank);
        return Empty(mapping).Program("rom", mapping.Start, bank);
    }

    /// <summary>A bench without a program.</summary>
    public static RomBench Empty(SnesMapping mapping) => new RomBench(new SnesPlatform()).Header("mapping", mapping.Name);

    /// <summary>Offset in its bank of an address of bank $00.</summary>
    public static int At(SnesMapping mapping, int address) => address & (mapping.BankSize - 1);

    public static void SetWord(byte[] bank, SnesMapping mapping, int address, int value) =>
        BinaryPrimitives.WriteUInt16LittleEndian(bank.AsSpan(At(mapping, address)), (ushort)value);

    /// <summary>A header as a program's source would have it, of 64 bytes from the title on.</summary>
    public static byte[] ForeignHeader(byte mapMode)
    {
        var header = new byte[0x40];
        "LANTERN TIDE         "u8.CopyTo(header);
        header[0x15] = mapMode;
        header[0x17] = 0x07;
        header[0x3D] = 0x80;
        return header;
    }

    /// <summary>The header as a reader sees it who has nothing but the image.</summary>
    public static HeaderImage Read(SnesMapping mapping, ReadOnlySpan<byte> rom)
    {
        var length = rom.Length;
        return HeaderReader.Read(SnesHeader.Table(mapping), rom, new HeaderContext(null, null, _ => length))!;
    }

    /// <summary>The finished ROM.</summary>
    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    /// <summary>How many findings of a rule there are.</summary>
    public static int Count(this RomBench bench, FindingRule rule) => bench.Log.ToSorted().Count(finding => finding.Rule == rule);
}
