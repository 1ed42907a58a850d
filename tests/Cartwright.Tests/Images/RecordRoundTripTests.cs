using System.Text;
using Cartwright.Images;
using Cartwright.Tests.Programs;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Images;

public sealed class RecordRoundTripTests
{
    private const int Longest = 5000;

    [Property(MaxTest = 300, Replay = "(1,3)")]
    public void Intel_HEX_reads_back_what_was_written(uint address, ushort length, int seed) => Same("game.hex", WriteHex, address, length, seed);

    [Property(MaxTest = 300, Replay = "(1,3)")]
    public void S_records_read_back_what_was_written(uint address, ushort length, int seed) => Same("game.srec", WriteS, address, length, seed);

    [Property(MaxTest = 300, Replay = "(1,3)")]
    public void Shuffled_records_give_the_same_segments(ushort address, ushort length, int seed)
    {
        var data = Data(length, seed);
        if (data.Length == 0) return;
        Shuffled("game.srec", WriteS(data, (uint)address << 12), seed, first: 1, last: 2);
        Shuffled("game.hex", WriteHex(data, Math.Min(address, 65536U - (uint)data.Length)), seed, first: 0, last: 1);
    }

    private static void Same(string file, Func<byte[], uint, byte[]> write, uint address, ushort length, int seed)
    {
        var data = Data(length, seed);
        // Small numbers come often; half of the cases are spread over all 32 bits, and some lie at a 64 KiB edge.
        var spread = (seed & 3) switch { 0 => address, 1 => address * 0x9E3779B1, 2 => (address << 16) - (uint)(data.Length / 2), _ => uint.MaxValue - address };
        var start = (uint)Math.Min(spread, (1L << 32) - data.Length);
        var reading = Reading.Of(file, write(data, start));
        Assert.Equal(data.Length == 0 ? ["CW2009"] : [], reading.Codes);
        Assert.NotNull(reading.Program);
        if (data.Length == 0)
        {
            Assert.Empty(reading.Program.Segments);
            return;
        }

        var segment = Assert.Single(reading.Program.Segments);
        Assert.Equal(start, segment.Address);
        Assert.Equal(data, segment.Bytes.ToArray());
    }

    private static void Shuffled(string file, byte[] text, int seed, int first, int last)
    {
        var lines = Encoding.ASCII.GetString(text).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var middle = lines[first..^last];
        new Random(seed).Shuffle(middle);
        var shuffled = Records.Lines([.. lines[..first], .. middle, .. lines[^last..]]);
        Assert.Equal(Reading.Show(Reading.Clean(file, text)), Reading.Show(Reading.Clean(file, shuffled)));
    }

    private static byte[] Data(ushort length, int seed)
    {
        var random = new Random(seed);
        // FsCheck's own lengths stay near 100: every other case is stretched.
        var data = new byte[(seed & 1) == 0 ? length % (Longest + 1) : random.Next(Longest + 1)];
        random.NextBytes(data);
        return data;
    }

    private static byte[] WriteHex(byte[] data, uint address)
    {
        using var stream = new MemoryStream();
        IntelHexWriter.Write(stream, data, address);
        return stream.ToArray();
    }

    private static byte[] WriteS(byte[] data, uint address)
    {
        using var stream = new MemoryStream();
        SRecordWriter.Write(stream, data, "Lantern Tide", address);
        return stream.ToArray();
    }
}
