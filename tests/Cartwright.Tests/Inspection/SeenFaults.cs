using System.Buffers.Binary;

namespace Cartwright.Tests.Inspection;

/// <summary>What was counted in homebrew images of all platforms, with the level it deserves and what may be put right.</summary>
internal static class SeenFaults
{
    public static SortedDictionary<string, SeenFault> All { get; } = new(StringComparer.Ordinal)
    {
        ["nes: 4 KiB behind CHR"] = new("nes", static file => [.. file, .. TestBytes.L(4096)], "CW4132 warning"),
        ["nes: a name in the last bytes"] = new("nes", static file => Put(file, 7, [0, .. "QUILLMOR"u8]), "CW4134 warning", Also: "reserved11"),
        ["nes: a RAM code without the mark of NES 2.0"] = new("nes", static file => Put(file, 7, [0, 0, 0, 7, 0, 0, 0, 0, 0]), "CW4135 warning", Also: "reserved10"),
        ["nes: unused interrupt vectors"] = new("nes", static file => Put(file, 0x10 + 0x3FFA, [0x00, 0x02, 0x00, 0xC0, 0x00, 0x00]), "CW4114 note"),
        ["snes: letters as checksums"] = new("snes", static file => Put(file, 0x7FDC, "CCCS"u8), "CW8008 warning", Mended: true),
        ["snes: checksums never filled in"] = new("snes", static file => Put(file, 0x7FDC, new byte[4]), "CW8008 warning", Mended: true),
        ["snes: size code of another game"] = new("snes", static file => Put(file, 0x7FD7, [0x01]), "CW8020 warning", Mended: true),
        ["snes: a maker code that is not set"] = new("snes", static file => Put(Put(file, 0x7FDA, [0x33]), 0x7FB0, [0x00, 0x00, .. "LTIE"u8]), "CW4163 note"),
        ["snes: a title filled up with zeros"] = new("snes", static file => Put(file, 0x7FC0 + 15, new byte[6]), "CW4165 note"),
        ["n64: a long title"] = new("n64", static file => Put(file, 0x34, "TITLE   AB"u8), "CW4280 note"),
        ["n64: a long title under the mark of the extension"] = new("n64", static file => Put(file, 0x34, "TITLE   ED"u8), "CW4281 warning"),
        ["gb: a header nobody filled in"] = new("gb", static file => Put(Put(file, 0x104, new byte[48]), 0x14D, new byte[3]), "CW4194 error", Mended: true),
        ["gb: another bitmap"] = new("gb", static file => Put(file, 0x104, Enumerable.Repeat((byte)0x5A, 48).ToArray()), "CW4194 error"),
        ["gb: a wrong sum of everything"] = new("gb", static file => Put(file, 0x14E, [0xFF, 0xFF]), "CW8008 warning", Mended: true),
        ["gb: 16 KiB"] = new("gb", static file => file[..0x4000], "CW8021 warning"),
        ["gb: a RAM code of 2 KiB"] = new("gb", static file => Put(Put(file, 0x147, [0x03]), 0x149, [0x01]), "CW4208 warning"),
        ["gb: RAM without a size"] = new("gb", static file => Put(Put(file, 0x147, [0x03]), 0x149, [0x00]), "CW4205 warning"),
        ["gb: filler as flags"] = new("gb", static file => Put(file, 0x146, [0xFF]), "CW4217 note"),
        ["gb: no title"] = new("gb", static file => Put(file, 0x134, new byte[16]), "CW4219 note"),
        ["gb: a title in small letters"] = new("gb", static file => Put(file, 0x134, "lantern tide    "u8), "CW4220 note"),
        ["gb: no jump at the start"] = new("gb", static file => Put(file, 0x100, [0xFF, 0xFF, 0xFF, 0xFF]), "CW4192 note"),
        ["gba: no power of two"] = new("gba", static file => file[..^3], "CW8004 note"),
        ["vb: a maker of spaces"] = new("vb", static file => Put(file, file.Length - 0x207, "  "u8), "CW4329 note"),
        ["md: an end beyond the file"] = new("md", static file => Put(file, 0x1A4, [0x00, 0x0F, 0xFF, 0xFF]), "CW4240 warning", Mended: true),
        ["md: the size instead of the end"] = new("md", static file => Put(file, 0x1A4, Big(file.Length)), "CW4241 warning", Mended: true),
        ["md: a checksum never filled in"] = new("md", static file => Put(file, 0x18E, [0x00, 0x00]), "CW4244 warning", Mended: true),
        ["md: the exclusive or as checksum"] = new("md", static file => Put(file, 0x18E, WordXor(Put(file, 0x18E, [0x00, 0x00]))), "CW4243 note", Also: "checksum"),
        ["md: a checksum of no known rule"] = new("md", static file => Put(file, 0x18E, [0x12, 0x34]), "CW8008 warning", Mended: true),
        ["md: a placeholder as copyright"] = new("md", static file => Put(file, 0x110, "(C)QMR 20XX.XXX "u8), "CW4236 note"),
        ["md: zeros as serial"] = new("md", static file => Put(file, 0x180, new byte[11]), "CW4238 note", Also: "serial"),
        ["md: zeros as modem"] = new("md", static file => Put(file, 0x1BC, new byte[12]), "CW4238 note", Also: "modem"),
        ["md: save memory beside its lane"] = new("md", static file => Put(file, 0x1B0, [.. "RA"u8, 0xF8, 0x20, .. Big(0x200000), .. Big(0x20FFFF)]), "CW4246 warning"),
        ["md: a device of the template"] = new("md", static file => Put(file, 0x190, "JD              "u8), null),
        ["sms: a sum that ends early"] = new("sms", static file => Put([.. file, .. TestBytes.All(0xFF, 0x8000)], 0x7FFF, [0x4C]), null),
        ["sms: the default of a tool"] = new("sms", static file => Put(Put(file, 0x7FF8, [0xFF, 0xFF]), 0x7FFC, [0x99, 0x99]), "CW4350 note"),
        ["sms: no header"] = new("sms", static file => Put(file, 0x7FF0, TestBytes.All(0xFF, 16)), "CW4340 error"),
        ["sms: code instead of a header"] = new("sms", static file => Put(file, 0x7FF0, TestBytes.L(16)), "CW4340 error"),
        ["pce: a prefix"] = new("pce", static file => [(byte)(file.Length / 8192), .. new byte[511], .. file], "CW8005 note"),
        ["pce: no power of two"] = new("pce", static file => [.. file, .. file, .. file], "CW4406 note"),
        ["ws: a checksum never filled in"] = new("ws", static file => Put(file, file.Length - 2, [0x00, 0x00]), "CW8019 note", Mended: true),
        ["ws: a size code of 1 MiB"] = new("ws", static file => Put(file, file.Length - 6, [0x03]), "CW8020 warning", Mended: true),
        ["ngp: no chip's size"] = new("ngp", static file => file[..0x9001], "CW8004 note"),
        ["ngp: erased reserved bytes"] = new("ngp", static file => Put(file, 0x30, TestBytes.All(0xFF, 16)), "CW4433 note", Also: "reserved"),
        ["coleco: one byte short"] = new("coleco", static file => file[..^1], "CW8004 note"),
        ["coleco: no handler of NMI"] = new("coleco", static file => Put(file, 0x21, new byte[3]), "CW4375 warning"),
        ["msx: letters behind INIT"] = new("msx", static file => Put(file, 0x04, "QUILLM"u8), "CW4391 warning", Also: "text"),
        ["vectrex: unpadded"] = new("vectrex", static file => file[..^100], "CW8004 note"),
    };

    private static byte[] Put(byte[] file, int offset, ReadOnlySpan<byte> bytes)
    {
        var spoilt = file.ToArray();
        bytes.CopyTo(spoilt.AsSpan(offset));
        return spoilt;
    }

    private static byte[] Big(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }

    private static byte[] WordXor(byte[] file)
    {
        var (high, low) = ((byte)0, (byte)0);
        for (var i = 0; i < file.Length; i += 2)
            (high, low) = ((byte)(high ^ file[i]), (byte)(low ^ file[i + 1]));

        return [high, low];
    }
}
