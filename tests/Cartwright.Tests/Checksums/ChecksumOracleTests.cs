using System.Globalization;
using Cartwright.Checksums;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Checksums;

/// <summary>Compares with the GNU core utilities.</summary>
public sealed class ChecksumOracleTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("cartwright-").FullName;
    private readonly byte[] image = TestBytes.L(0x23456);

    public ChecksumOracleTests() => File.WriteAllBytes(Path.Combine(folder, "image.bin"), image);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // The System V algorithm: the sum of all bytes, its upper half added to its lower one, twice.
    [Fact]
    public void The_byte_sum_is_what_sum_adds_up()
    {
        var whole = ByteSum.Sum32(image);
        var once = (whole & 0xFFFF) + (whole >> 16);
        var twice = (once & 0xFFFF) + (once >> 16);
        Assert.Equal(Numbers("sum", "--sysv", "image.bin").First(), twice);
    }

    [Fact]
    public void The_word_sum_and_exclusive_or_are_those_of_the_words_od_prints()
    {
        var words = Numbers("od", "-An", "-v", "-tu2", "--endian=big", "image.bin").ToList();
        Assert.Equal(image.Length / 2, words.Count);
        Assert.Equal((ushort)words.Sum(word => word), WordSum.BigEndian16(image));
        Assert.Equal(words.Aggregate((left, right) => left ^ right), WordXor.BigEndian16(image));
    }

    private IEnumerable<long> Numbers(string tool, params string[] arguments)
    {
        Tool.Require(tool);
        var result = Tool.Run(tool, folder, arguments);
        Assert.True(result.ExitCode == 0, result.Error);
        return result.Output
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .TakeWhile(word => word != "image.bin")
            .Select(word => long.Parse(word, CultureInfo.InvariantCulture));
    }
}
