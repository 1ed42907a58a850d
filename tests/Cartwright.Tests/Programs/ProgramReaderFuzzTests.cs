using System.Text;
using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

/// <summary>The reader answers every input with segments or findings: an exception fails the test by itself.</summary>
public sealed class ProgramReaderFuzzTests
{
    private const int Cases = 3000;

    private static readonly ProgramFormat?[] Formats = [null, ProgramFormat.Raw, ProgramFormat.IntelHex, ProgramFormat.SRecord, ProgramFormat.Elf];

    private static readonly byte[][] Valid =
    [
        Encoding.ASCII.GetBytes(Records.Lines(
            Records.Hex(4, 0, 8, 0), Records.Hex(0, 0xFFF8, Records.Count(16)), Records.Hex(2, 0, 0x10, 0), Records.Hex(0, 0xFFF0, Records.Count(16)), Records.Hex(5, 0, 0, 0, 1, 2), Records.HexEnd)),
        Encoding.ASCII.GetBytes(Records.Lines(
            Records.S(0, 0, 0x48), Records.S(1, 0x8000, Records.Count(20)), Records.S(2, 0x8010, Records.Count(4, 16)), Records.S(3, 0x9000, 1), Records.S(5, 3), Records.S(9, 0))),
        new ElfBuilder { BigEndian = true }.Load(0x8000, 0x8000, Records.Count(64)).Load(0x200, 0x8040, Records.Count(8), 99).Header(4, 0, 0, 0, 1, 1).Build(),
        new ElfBuilder().Load(0x8000, 0, Records.Count(64)).Load(0x9000, 0, Records.Count(8), 99).Build(),
    ];

    [Fact]
    public void Random_bytes_never_throw()
    {
        var random = new Random(1);
        for (var i = 0; i < Cases; i++)
        {
            var bytes = new byte[random.Next(0, 300)];
            random.NextBytes(bytes);
            ReadOnlySpan<byte> opening = (i % 4) switch { 0 => ":"u8, 1 => "S1"u8, 2 => [0x7F, 0x45, 0x4C, 0x46, 1, 1, 1], _ => [] };
            if (opening.Length <= bytes.Length) opening.CopyTo(bytes);
            Check(bytes, Formats[random.Next(Formats.Length)], random);
        }
    }

    [Fact]
    public void Damaged_valid_files_never_throw()
    {
        var random = new Random(2);
        for (var i = 0; i < Cases; i++)
        {
            var bytes = (byte[])Valid[i % Valid.Length].Clone();
            for (var change = random.Next(1, 6); change > 0; change--) bytes[random.Next(bytes.Length)] = Damage(random);
            Check(bytes.AsMemory(0, random.Next(3) == 0 ? random.Next(bytes.Length) : bytes.Length), null, random);
        }
    }

    // Rightly framed records with wild fields reach the address arithmetic that damaged checksums keep others from.
    [Fact]
    public void Wild_records_with_right_checksums_never_throw()
    {
        var random = new Random(3);
        for (var i = 0; i < Cases; i++)
        {
            var isHex = i % 2 == 0;
            var records = Enumerable.Range(0, random.Next(1, 12)).Select(_ =>
            {
                var data = new byte[random.Next(0, 5)];
                random.NextBytes(data);
                return isHex ? Records.Hex(random.Next(0, 7), random.Next(0, 4) << 14, data) : Records.S(random.Next(0, 10), random.NextInt64(1L << 32), data);
            });
            Check(Encoding.ASCII.GetBytes(Records.Lines(records)), isHex ? ProgramFormat.IntelHex : ProgramFormat.SRecord, random);
        }
    }

    private static byte Damage(Random random) => random.Next(3) switch
    {
        0 => "0123456789ABCDEF:S\r\n \x1A"u8[random.Next(22)],
        1 => (byte)(random.Next(2) * 255),
        _ => (byte)random.Next(256),
    };

    private static void Check(ReadOnlyMemory<byte> bytes, ProgramFormat? format, Random random)
    {
        var options = new ProgramReadOptions { AddressUnit = random.Next(1, 3), ElfLoad = (ElfLoad)random.Next(2) };
        var reading = Reading.Of(random.Next(2) == 0 ? "game.hex" : "game", bytes, format, options);
        if (reading.Program is not { } program) return;
        for (var i = 1; i < program.Segments.Length; i++) Assert.True(program.Segments[i - 1].End < program.Segments[i].Address);
        Assert.All(program.Segments, segment => Assert.True(segment.Length > 0));
    }
}
