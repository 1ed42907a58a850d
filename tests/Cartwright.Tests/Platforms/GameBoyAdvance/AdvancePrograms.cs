using Cartwright.Platforms.GameBoyAdvance;

namespace Cartwright.Tests.Platforms.GameBoyAdvance;

/// <summary>Programs for the tests: 64 KiB of ARM code behind a blank header, and what is changed in them.</summary>
internal static class AdvancePrograms
{
    public const int Size = 0x10000;

    public static byte[] Whole()
    {
        var bytes = TestBytes.L(Size);
        bytes.AsSpan(0, AdvanceHeader.Length).Clear();
        return bytes;
    }

    public static RomBench Bench(byte[]? program = null) => new RomBench(new AdvancePlatform()).Program("rom", 0, program ?? Whole());

    public static RomBench Changed(int at, params byte[] bytes)
    {
        var program = Whole();
        bytes.CopyTo(program, at);
        return Bench(program);
    }
}
