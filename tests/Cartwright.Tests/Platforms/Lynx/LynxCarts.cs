using Cartwright.Platforms.Lynx;

namespace Cartwright.Tests.Platforms.Lynx;

/// <summary>Cartridges for the tests.</summary>
internal static class LynxCarts
{
    public const int K = 1 << 10;

    public const int Directory = 0x19A;

    public static LynxPlatform Machine { get; } = new();

    /// <summary>Frames of three and five blocks, a directory whose first entry names all of the file behind it, and that file.</summary>
    public static byte[] Program(int length = 0x1000, string entry = "000002880004000C")
    {
        var program = TestBytes.L(length);
        (program[0], program[0x9A]) = (0xFD, 0xFB);
        Convert.FromHexString(entry).CopyTo(program, Directory);
        return program;
    }

    public static RomBench Bench(byte[] program) => new RomBench(Machine).Program("rom", 0, program).Header("blockSize", "1024");
}
