using Cartwright.FaultSimulator;
using Xunit;
using static Cartwright.Tests.ReadBacks.SimulatorTests.SimulatedReadBacks;

namespace Cartwright.Tests.ReadBacks.SimulatorTests;

/// <summary>The worked miniature: 16 words, 4 address lines, every word its own address. The read-backs were worked out by hand.</summary>
public sealed class MiniatureTests
{
    public static TheoryData<string, Fault, string> Vectors => new()
    {
        { "A0 stuck low", Fault.Of("address-stuck-low", "A0"), "00 00 02 02 04 04 06 06 08 08 0A 0A 0C 0C 0E 0E" },
        { "A2 stuck high", Fault.Of("address-stuck-high", "A2"), "04 05 06 07 04 05 06 07 0C 0D 0E 0F 0C 0D 0E 0F" },
        { "D2 stuck high", Fault.Of("data-stuck-high", "D2"), "04 05 06 07 04 05 06 07 0C 0D 0E 0F 0C 0D 0E 0F" },
        { "A0 and A1 exchanged", Fault.Of("address-swapped", "A0", "A1"), "00 02 01 03 04 06 05 07 08 0A 09 0B 0C 0E 0D 0F" },
        { "D0 and D1 exchanged", Fault.Of("data-swapped", "D0", "D1"), "00 02 01 03 04 06 05 07 08 0A 09 0B 0C 0E 0D 0F" },
        { "A0 and A1 shorted, low wins", Fault.Of("address-shorted", "A0", "A1") with { Wins = "low" }, "00 00 00 03 04 04 04 07 08 08 08 0B 0C 0C 0C 0F" },
        { "D0 and D1 shorted, low wins", Fault.Of("data-shorted", "D0", "D1") with { Wins = "low" }, "00 00 00 03 04 04 04 07 08 08 08 0B 0C 0C 0C 0F" },
        { "A0 and A1 shorted, high wins", Fault.Of("address-shorted", "A0", "A1") with { Wins = "high" }, "00 03 03 03 04 07 07 07 08 0B 0B 0B 0C 0F 0F 0F" },
        { "bytes of each word exchanged", new Fault("bytes-swapped"), "01 00 03 02 05 04 07 06 09 08 0B 0A 0D 0C 0F 0E" },
        { "four banks, order reversed", new Fault("banks-reordered") { BankSize = 4, Order = [3, 2, 1, 0] }, "0C 0D 0E 0F 08 09 0A 0B 04 05 06 07 00 01 02 03" },
        { "four banks, second first", new Fault("rotated") { By = 4 }, "04 05 06 07 08 09 0A 0B 0C 0D 0E 0F 00 01 02 03" },
        { "halves exchanged", new Fault("halves-exchanged"), "08 09 0A 0B 0C 0D 0E 0F 00 01 02 03 04 05 06 07" },
        { "programmed over 05", new Fault("not-erased") { Image = [.. Enumerable.Repeat((byte)5, 16)] }, "00 01 00 01 04 05 04 05 00 01 00 01 04 05 04 05" },
        { "A3 dead while programming", Fault.Of("address-dead-while-writing", "A3"), "00 01 02 03 04 05 06 07 00 01 02 03 04 05 06 07" },
        { "even bytes first, then odd", new Fault("interleave-not-done"), "00 02 04 06 08 0A 0C 0E 01 03 05 07 09 0B 0D 0F" },
        { "read one cycle late", new Fault("read-too-early"), "0F 00 01 02 03 04 05 06 07 08 09 0A 0B 0C 0D 0E" },
    };

    [Theory]
    [MemberData(nameof(Vectors))]
    public void A_worked_read_back(string name, Fault fault, string expected) => Assert.Equal((name, expected), (name, Words(Read(Counting, fault))));

    [Fact]
    public void A_hash_image_tells_them_all_apart()
    {
        var image = Random(16, 5);
        var readBacks = Vectors.Select(row => Words(Read(image, row.Data.Item2))).ToList();
        Assert.Equal(readBacks.Count, readBacks.Distinct(StringComparer.Ordinal).Count());
    }

    private static string Words(byte[] bytes) => string.Join(' ', bytes.Select(value => value.ToString("X2")));
}
