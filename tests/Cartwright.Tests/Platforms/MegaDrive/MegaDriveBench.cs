using System.Buffers.Binary;
using System.Text;
using Cartwright.Platforms.MegaDrive;

namespace Cartwright.Tests.Platforms.MegaDrive;

/// <summary>Carts for the tests of the Mega Drive.</summary>
internal static class MegaDriveBench
{
    public const string Copyright = "(C)QUIL 2026.JAN";

    public static MegaDrivePlatform Platform { get; } = new();

    /// <summary>Vectors, and a little program at 0x200; nothing in the header.</summary>
    public static byte[] Program(int length, uint stack = 0, uint entry = 0x200)
    {
        var program = TestBytes.L(length);
        program.AsSpan(0, 0x200).Clear();
        BinaryPrimitives.WriteUInt32BigEndian(program, stack);
        BinaryPrimitives.WriteUInt32BigEndian(program.AsSpan(4), entry);
        return program;
    }

    /// <summary>A program that holds a whole header of its own, right in every field.</summary>
    public static byte[] Finished(int length) =>
        Bench(Program(length)).Size("rom", length).Assemble().Bytes("rom").ToArray();

    public static RomBench Bench(byte[] program) => new RomBench(Platform).Program("rom", 0, program).Header("copyright", Copyright);

    /// <summary>A program with its own header, changed at one place; every byte of it is kept.</summary>
    public static RomBench Kept(int offset, params byte[] bytes)
    {
        var program = Finished(0x20000);
        bytes.CopyTo(program, offset);
        return Bench(program).Keep(true, "checksum");
    }

    public static byte[] Ascii(string text) => Encoding.ASCII.GetBytes(text);

    public static byte[] Hex(string digits) => Convert.FromHexString(digits.Replace(" ", "", StringComparison.Ordinal));

    /// <summary>The text of a field read from bytes.</summary>
    public static string Read(string field, byte[] bytes) => Row(field).Codec.Read(bytes);

    /// <summary>The bytes of a field written from text, and what was wrong with it.</summary>
    public static (byte[] Bytes, string? Problem) Write(string field, string text)
    {
        var row = Row(field);
        var bytes = new byte[row.Length];
        return (bytes, row.Codec.Write(text, bytes));
    }

    public static Cartwright.Headers.HeaderField Row(string field) =>
        Platform.Layouts[0].Headers[0].Fields.Single(row => row.Name == field);
}
