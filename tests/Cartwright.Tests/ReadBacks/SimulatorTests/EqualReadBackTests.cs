using System.Collections.Immutable;
using Cartwright.FaultSimulator;
using Xunit;
using static Cartwright.Tests.ReadBacks.SimulatorTests.SimulatedReadBacks;

namespace Cartwright.Tests.ReadBacks.SimulatorTests;

/// <summary>Kinds that leave the same read-back whatever the image holds: each row names one read-back and the faults that leave it.</summary>
public sealed class EqualReadBackTests
{
    private const int Size = 1024;
    private const int Half = Size / 2;
    private static readonly byte[] Image = Random(Size);
    private static readonly byte[] Other = Random(Size, 2);

    [Fact]
    public void The_top_line_inverted() =>
        AllRead(From(a => a ^ Half), Fault.Of("address-inverted", "A9"), new("halves-exchanged"), new("rotated") { By = Half }, Banks(Half, 1, 0));

    [Fact]
    public void Other_lines_of_whole_banks_inverted() =>
        AllRead(From(a => a ^ 0x300), Fault.Of("address-inverted", "A8", "A9"), Banks(256, 3, 2, 1, 0));

    [Fact]
    public void The_bytes_of_each_pair_exchanged()
    {
        var expected = From(a => a ^ 1);
        AllRead(expected, new("bytes-swapped"), new("lanes-exchanged") { Order = [1, 0] }, Fault.Of("address-inverted", "A0"));
        Assert.Equal(expected, Read16(Image, new Fault("data-permuted") { Map = [8, 9, 10, 11, 12, 13, 14, 15, 0, 1, 2, 3, 4, 5, 6, 7] }));
        Assert.Equal(expected, Read16(Image, new Fault("bytes-swapped")));
    }

    [Fact]
    public void The_words_of_each_pair_exchanged()
    {
        var expected = From(a => a ^ 2);
        AllRead(expected, new("words-swapped"), new("lanes-exchanged") { Order = [2, 3, 0, 1] }, Fault.Of("address-inverted", "A1"));
        Assert.Equal(expected, Read16(Image, Fault.Of("address-inverted", "A0")));
        Assert.Equal(expected, Read16(Image, new Fault("words-swapped")));
    }

    [Fact]
    public void Lanes_permuted_by_exchanging_bits_of_the_lane_number() =>
        AllRead(From(a => (a & ~3) | ((a & 1) << 1) | ((a >> 1) & 1)), new("lanes-exchanged") { Order = [0, 2, 1, 3] }, Fault.Of("address-swapped", "A0", "A1"));

    [Fact]
    public void The_low_half_twice() =>
        AllRead(
            From(a => a % Half),
            Fault.Of("address-stuck-low", "A9"),
            new("repeated") { Period = Half },
            new("latch-dead") { BankSize = Half, Bank = 0 },
            new("bus-conflict") { BankSize = Half, Values = [0, 0] },
            new("chip-too-small") { Size = Half, Holds = "first" });

    [Fact]
    public void The_high_half_twice() =>
        AllRead(
            From(a => Half + (a % Half)),
            Fault.Of("address-stuck-high", "A9"),
            new("latch-dead") { BankSize = Half, Bank = 1 },
            new("chip-too-small") { Size = Half, Holds = "last" });

    [Fact]
    public void A_quarter_four_times()
    {
        var expected = From(a => a % 256);
        AllRead(expected, new("repeated") { Period = 256 }, new("latch-dead") { BankSize = 256 });
        Assert.Equal(expected, Read(Image, Fault.Of("address-stuck-low", "A8"), Fault.Of("address-stuck-low", "A9")));
    }

    [Fact]
    public void Both_halves_mixed() =>
        AllRead(From(a => Image[a] & Image[a ^ Half], a => a), Fault.Of("address-dead-while-writing", "A9"), new("chip-too-small") { Size = Half });

    [Fact]
    public void Two_words_mixed_by_a_line()
    {
        var expected = From(a => Image[a] & Image[a ^ 16], a => a);
        AllRead(expected, Fault.Of("address-dead-while-writing", "A4"));
        Assert.Equal(expected, ReadInPlace(Image, Fault.Of("address-stuck-low", "A4")));
        Assert.Equal(expected, ReadInPlace(Image, Fault.Of("address-stuck-high", "A4")));
    }

    [Fact]
    public void Whole_banks_moved_by_exchanging_lines() =>
        AllRead(
            Read(Image, Fault.Of("address-swapped", "A8", "A9")),
            new("address-permuted") { Map = [0, 1, 2, 3, 4, 5, 6, 7, 9, 8] },
            Banks(256, 0, 2, 1, 3));

    [Fact]
    public void Address_bits_rotated()
    {
        AllRead(Read(Image, new Fault("interleave-not-done")), new Fault("address-permuted") { Map = [1, 2, 3, 4, 5, 6, 7, 8, 9, 0] });
        AllRead(Read(Image, new Fault("interleave-done-twice")), new Fault("address-permuted") { Map = [9, 0, 1, 2, 3, 4, 5, 6, 7, 8] });
        Assert.Equal(
            Read16(Image, new Fault("interleave-not-done") { Unit = 2 }),
            Read16(Image, new Fault("address-permuted") { Map = [1, 2, 3, 4, 5, 6, 7, 8, 0] }));
    }

    [Fact]
    public void All_ones_or_all_zeros()
    {
        AllRead(TestBytes.All(0xFF, Size), new("blank"), new("bus-not-driven"), new("stopped-early") { At = 0 });
        AllRead(TestBytes.All(0, Size), new("blank") { Value = 0 }, new("bus-not-driven") { Shows = "zeros" });
    }

    [Fact]
    public void An_aligned_block_of_ones() =>
        AllRead(
            From(a => a >= Half ? 0xFF : Image[a], a => a),
            new("not-selected-range") { Start = Half, Length = Half },
            new("blocks-missing") { Blocks = [(Half, Half)] },
            new("stopped-early") { At = Half });

    [Fact]
    public void Bit_seven_of_every_byte_clear() =>
        AllRead(From(a => Image[a] & 0x7F, a => a), new("file-damaged-as-text") { How = "seven-bit" }, Fault.Of("data-stuck-low", "D7"));

    [Fact]
    public void A_constant_bit()
    {
        AllRead(Read(Image, Fault.Of("data-stuck-low", "D3")), Fault.Of("data-open", "D3") with { Follows = "low" });
        AllRead(Read(Image, Fault.Of("data-stuck-high", "D3")), Fault.Of("data-open", "D3") with { Follows = "high" });
    }

    [Fact]
    public void The_word_before() => AllRead(From(a => (a + Size - 1) % Size), new("read-too-early"), new("rotated") { By = -1 });

    [Fact]
    public void Another_image_over_the_whole_chip() =>
        AllRead(
            From(a => Image[a] & Other[a], a => a),
            new("not-erased") { Image = [.. Other] },
            new("two-chips-enabled") { Start = 0, Length = Size, Image = [.. Other] });

    [Fact]
    public void A_stuck_line_on_either_side_of_a_permutation()
    {
        Assert.Equal(
            Read(Image, Fault.Of("address-swapped", "A1", "A4"), Fault.Of("address-stuck-low", "A4")),
            Read(Image, Fault.Of("address-stuck-low", "A1"), Fault.Of("address-swapped", "A1", "A4")));
        Assert.Equal(
            Read(Image, Fault.Of("data-stuck-high", "D1"), Fault.Of("data-swapped", "D1", "D6")),
            Read(Image, Fault.Of("data-swapped", "D1", "D6"), Fault.Of("data-stuck-high", "D6")));
    }

    [Fact]
    public void Several_exchanges_and_their_product()
    {
        var product = Read(Image, Fault.Of("address-swapped", "A0", "A1"), Fault.Of("address-swapped", "A1", "A2"));
        Assert.Equal(product, Read(Image, Fault.Of("address-swapped", "A1", "A2"), Fault.Of("address-swapped", "A0", "A2")));
        AllRead(product, new Fault("address-permuted") { Map = [2, 0, 1, 3, 4, 5, 6, 7, 8, 9] });
    }

    [Fact]
    public void A_stuck_line_shorted_to_another() =>
        Assert.Equal(
            Read(Image, Fault.Of("address-stuck-low", "A2"), Fault.Of("address-shorted", "A2", "A5")),
            Read(Image, Fault.Of("address-stuck-low", "A2"), Fault.Of("address-stuck-low", "A5")));

    private static Fault Banks(int size, params ImmutableArray<int> order) => new("banks-reordered") { BankSize = size, Order = order };

    private static byte[] From(Func<int, int> source) => From(a => Image[a], source);

    private static byte[] From(Func<int, int> value, Func<int, int> source) => [.. Enumerable.Range(0, Size).Select(a => (byte)value(source(a)))];

    private static void AllRead(byte[] expected, params ImmutableArray<Fault> faults)
    {
        Assert.NotEqual(expected, Image);
        Assert.All(faults, fault => Assert.Equal(expected, Read(Image, fault)));
    }
}
