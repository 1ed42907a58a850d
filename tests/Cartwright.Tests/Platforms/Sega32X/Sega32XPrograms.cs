using System.Buffers.Binary;
using System.Text;
using Cartwright.Platforms;
using Cartwright.Platforms.MegaDrive;

namespace Cartwright.Tests.Platforms.Sega32X;

/// <summary>Programs for the tests: vectors, a module header, noise in place of the start-up block and behind it; nothing in the Mega Drive's header.</summary>
internal static class Sega32XPrograms
{
    public const string Copyright = "(C)QUIL 2026.JAN";
    public const int Length = 0x20000;

    public static byte[] Program()
    {
        var program = TestBytes.L(Length);
        program.AsSpan(0, ModuleHeader.StartUp).Clear();
        for (var vector = 4; vector < 0x100; vector += 4)
            Put(program, vector, ModuleHeader.StartUp);
        Encoding.ASCII.GetBytes("MARS CHECK MODE ").CopyTo(program, ModuleHeader.Start);
        Put(program, 0x3D4, 0x1000);
        Put(program, 0x3DC, 0x2000);
        Put(program, 0x3E0, 0x06000240);
        Put(program, 0x3E4, 0x06000244);
        Put(program, 0x3E8, 0x06000000);
        Put(program, 0x3EC, 0x06000120);
        return program;
    }

    /// <summary>A program with bytes put into it, one run after the other.</summary>
    public static byte[] Changed(params (int At, string Digits)[] changes)
    {
        var program = Program();
        foreach (var (at, digits) in changes)
            Convert.FromHexString(digits).CopyTo(program, at);
        return program;
    }

    public static RomBench Bench(byte[]? program = null) => Empty().Program("rom", 0, program ?? Program());

    public static RomBench Empty() => new RomBench(new Sega32XPlatform()).Header("copyright", Copyright).Size("rom", Length);

    public static byte[] Rom(this CartView cart) => cart.Bytes("rom").ToArray();

    private static void Put(byte[] program, int at, uint value) => BinaryPrimitives.WriteUInt32BigEndian(program.AsSpan(at), value);
}
