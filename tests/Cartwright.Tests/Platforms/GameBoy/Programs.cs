using Cartwright.Platforms.GameBoy;

namespace Cartwright.Tests.Platforms.GameBoy;

/// <summary>Small programs for Game Boy tests.</summary>
internal static class Programs
{
    /// <summary>nop and jp $0150: the customary entry (Pan Docs, The Cartridge Header).</summary>
    public static ReadOnlySpan<byte> Entry => [0x00, 0xC3, 0x50, 0x01];

    /// <summary>A program that covers everything, with the customary entry and a blank header.</summary>
    public static byte[] Whole(int length = 0x8000)
    {
        var bytes = TestBytes.GameBoy(length);
        bytes.AsSpan(0x100, 0x50).Clear();
        Entry.CopyTo(bytes.AsSpan(0x100));
        return bytes;
    }

    /// <summary>A bench with that program.</summary>
    public static RomBench Bench(int length = 0x8000, string? title = "LANTERN TIDE") =>
        new RomBench(new GameBoyPlatform()) { Title = title }.Program("rom", 0, Whole(length));

    /// <summary>A bench with that program, some of its bytes changed.</summary>
    public static RomBench Changed(int offset, params byte[] bytes)
    {
        var program = Whole();
        bytes.CopyTo(program, offset);
        return new RomBench(new GameBoyPlatform()) { Title = "LANTERN TIDE" }.Program("rom", 0, program);
    }
}
