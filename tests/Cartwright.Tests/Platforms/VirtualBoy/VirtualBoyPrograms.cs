using System.Text;
using Cartwright.Platforms.VirtualBoy;

namespace Cartwright.Tests.Platforms.VirtualBoy;

/// <summary>Programs for the tests.</summary>
internal static class VirtualBoyPrograms
{
    public const int Size = 0x10000;

    /// <summary>A small program at the start, and nothing at the end.</summary>
    public static RomBench Bench(byte[]? program = null) => new RomBench(new VirtualBoyPlatform()).Program("rom", 0, program ?? TestBytes.L(0x2000))
        .Size("rom", Size).Header("makerCode", "QM").Header("gameCode", "VLTE");

    /// <summary>The same with its reset code stated.</summary>
    public static RomBench Started() => Bench().Header("reset", "$07000000");

    /// <summary>A finished ROM.</summary>
    public static byte[] Finished() => Started().Assemble().Bytes("rom").ToArray();

    /// <summary>The last 544 bytes as a linker makes them.</summary>
    public static byte[] Tail()
    {
        var tail = new byte[VirtualBoyHeader.Length];
        Encoding.ASCII.GetBytes("LANTERN TIDE").CopyTo(tail, 0);
        Encoding.ASCII.GetBytes("QMVLTE").CopyTo(tail, 0x19);
        V810Jump.WriteStub(0x07000000, tail.AsSpan(^0x10));
        return tail;
    }

    public static byte[] Hex(string digits) => Convert.FromHexString(digits.Replace(" ", "", StringComparison.Ordinal));
}
