using System.Collections.Immutable;
using Cartwright.FaultSimulator;
using Xunit;
using static Cartwright.Tests.ReadBacks.SimulatorTests.SimulatedReadBacks;

namespace Cartwright.Tests.ReadBacks.SimulatorTests;

/// <summary>What the tables of read-backs do not hold: both worlds, chance, words of 16 bits, and the order of the signal.</summary>
public sealed class SimulationTests
{
    private const int Size = 1024;
    private static readonly byte[] Image = Random(Size);

    [Fact]
    public void Nothing_wrong_reads_the_image()
    {
        Assert.Equal(Image, Read(Image));
        Assert.Equal(Image, Read16(Image));
        Assert.Equal(Image, ReadInPlace(Image));
    }

    [Theory]
    [InlineData("address-swapped", "A0", "A9")]
    [InlineData("address-inverted", "A3", "A7")]
    [InlineData("data-swapped", "D0", "D7")]
    [InlineData("data-inverted", "D2", "D5")]
    [InlineData("data-reversed")]
    public void Written_and_read_through_the_same_permutation_nothing_shows(string kind, params string[] lines)
    {
        var fault = Fault.Of(kind, [.. lines]);
        Assert.NotEqual(Image, Read(Image, fault));
        Assert.Equal(Image, ReadInPlace(Image, fault));
    }

    [Fact]
    public void A_list_of_permutations_is_undone_from_the_other_end()
    {
        ImmutableArray<Fault> faults = [Fault.Of("data-swapped", "D0", "D1"), new("data-permuted") { Map = [3, 0, 1, 2, 7, 6, 5, 4] }, Fault.Of("data-swapped", "D1", "D6")];
        Assert.NotEqual(Image, Read(Image, faults));
        Assert.Equal(Image, ReadInPlace(Image, faults));
    }

    [Fact]
    public void An_open_data_line_programs_nothing() =>
        Assert.Equal(TestBytes.All(0xFF, 16), ReadInPlace(TestBytes.All(0xEF, 16), Fault.Of("data-open", "D4") with { Follows = "high" }));

    [Fact]
    public void In_a_ram_the_last_word_stays()
    {
        var bench = new Bench(Bytes) { WrittenInPlace = true, Ram = true };
        var read = new Simulation(bench, Counting, Fault.Of("address-stuck-low", "A3")).Read(new Reading(0));
        Assert.Equal([8, 9, 10, 11, 12, 13, 14, 15, 8, 9, 10, 11, 12, 13, 14, 15], read);
    }

    [Fact]
    public void A_shorted_address_line_written_in_place_leaves_cells_erased()
    {
        // Words 1 and 2 land on cell 0 with word 0; nothing lands on cells 1 and 2, and nobody can read them.
        var read = ReadInPlace(Counting, Fault.Of("address-shorted", "A0", "A1"));
        Assert.Equal([0, 0, 0, 3], read[..4]);
    }

    [Fact]
    public void A_line_dead_only_while_writing_leaves_one_half_erased() =>
        Assert.Equal(
            [0, 1, 0, 1, 0xFF, 0xFF, 0xFF, 0xFF],
            Read([2, 3, 4, 5, 8, 9, 10, 11], Fault.Of("address-dead-while-writing", "A2") with { Reading = "low" }));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Data_lines_count_from_the_low_byte_whatever_the_order_in_the_file(bool highByteFirst)
    {
        var read = new Simulation(new Bench(new ChipShape(16, highByteFirst)), [0, 0, 0, 0], Fault.Of("data-stuck-high", "D8")).Read(new Reading(0));
        Assert.Equal(highByteFirst ? [1, 0, 1, 0] : [0, 1, 0, 1], read);
    }

    [Fact]
    public void Each_byte_of_a_word_reversed_on_its_own() =>
        Assert.Equal([0x80, 0xC0], Read16([0x01, 0x03], Fault.Of("data-reversed") with { Within = "byte" }));

    [Fact]
    public void The_whole_word_reversed() => Assert.Equal([0xC0, 0x80], Read16([0x01, 0x03], Fault.Of("data-reversed")));

    [Fact]
    public void A_bridge_follows_the_readers_address_and_not_the_chips()
    {
        ImmutableArray<Fault> faults = [Fault.Of("data-address-bridged", "D0", "A1"), Fault.Of("address-swapped", "A0", "A1")];
        Assert.Equal([0, 0, 1, 1], Read([1, 1, 1, 1], faults));
    }

    [Fact]
    public void Faults_act_along_the_signal_whatever_their_order()
    {
        Fault[] faults = [new("random-noise") { Rate = 0.01 }, Fault.Of("data-stuck-low", "D0"), Fault.Of("address-swapped", "A0", "A1"), new("bytes-swapped")];
        Assert.Equal(Read(Image, [.. faults]), Read(Image, [.. faults.Reverse()]));
    }

    public static TheoryData<Fault> Varying =>
    [
        Fault.Of("data-open", "D3"), Fault.Of("address-open", "A9"), Fault.Of("data-shorted", "D0", "D5") with { Wins = "either" },
        new Fault("bus-not-driven") { Shows = "chance" }, new Fault("under-programmed") { Share = 0.01 }, new Fault("random-noise") { Rate = 0.01 },
        new Fault("read-too-early") { Share = 0.5 }, new Fault("bounce") { Rate = 0.05, Threshold = 2 }, new Fault("left-in-status-mode") { Mode = "busy" },
    ];

    [Theory]
    [MemberData(nameof(Varying))]
    public void A_fault_that_varies(Fault fault)
    {
        var simulation = new Simulation(new Bench(Bytes), Image, fault);
        Assert.NotEqual(simulation.Read(new Reading(0)), simulation.Read(new Reading(1)));
        Assert.Equal(simulation.Read(new Reading(1)), simulation.Read(new Reading(1)));
    }

    [Fact]
    public void A_chance_bit_stays_for_its_run()
    {
        var read = Read(TestBytes.All(0, Size), Fault.Of("data-open", "D3") with { Run = 4 });
        Assert.All(read.Chunk(16), run => Assert.Single(run.Distinct()));
        Assert.InRange(read.Count(value => value == 8), Size / 4, 3 * Size / 4);
    }

    [Fact]
    public void Chance_keeps_its_rate() =>
        Assert.InRange(Read(TestBytes.All(0, 1 << 16), new Fault("random-noise") { Rate = 0.01 }).Sum(value => int.PopCount(value)), 4900, 5600);

    [Fact]
    public void Weak_cells_only_gain_ones_and_are_others_after_another_programming()
    {
        var simulation = new Simulation(new Bench(Bytes), Image, new Fault("under-programmed") { Share = 0.01, ShowsOne = 1 });
        var first = simulation.Read(new Reading(0));
        Assert.All(first.Zip(Image), pair => Assert.Equal(0, ~pair.First & pair.Second & 0xFF));
        Assert.Equal(first, simulation.Read(new Reading(1)));
        Assert.NotEqual(first, simulation.Read(new Reading(2, Programming: 1)));
    }

    [Fact]
    public void Damaged_cells_are_the_same_after_another_programming()
    {
        var simulation = new Simulation(new Bench(Bytes), Image, new Fault("cells-damaged") { Share = 0.01 });
        Assert.NotEqual(Image, simulation.Read(new Reading(0)));
        Assert.Equal(simulation.Read(new Reading(0)), simulation.Read(new Reading(1, 1, 1)));
    }

    [Fact]
    public void A_contact_is_bad_only_in_its_bad_insertions()
    {
        var fault = new Fault("contact") { Inner = Fault.Of("data-stuck-low", "D1"), BadInsertions = [1] };
        var simulation = new Simulation(new Bench(Bytes), Image, fault);
        Assert.Equal(Image, simulation.Read(new Reading(0, 0)));
        Assert.Equal(Read(Image, Fault.Of("data-stuck-low", "D1")), simulation.Read(new Reading(1, 1)));
        Assert.Equal(Image, simulation.Read(new Reading(2, 2)));
    }

    [Fact]
    public void A_chip_in_identify_mode_repeats_its_table() =>
        Assert.Equal([0xBF, 0xB7, 0xBF, 0xB7], Read([1, 2, 3, 4], new Fault("left-in-status-mode") { Table = [0xBF, 0xB7] }));

    [Fact]
    public void The_wrong_half_is_half_as_long() => Assert.Equal(Image[512..], Read(Image, new Fault("wrong-half")));

    [Fact]
    public void A_bus_conflict_shows_the_bank_of_both_values() =>
        Assert.Equal([0, 1, 0, 3], Read([0, 1, 2, 3], new Fault("bus-conflict") { BankSize = 1, Values = [3, 3, 1, 3] }));

    [Theory]
    [InlineData("cr-inserted", "41 0A 0D 0A 1A 42", "41 0D 0A 0D 0D 0A")]
    [InlineData("cr-removed", "41 0D 0A 0D 42 43", "41 0A 0D 42 43 FF")]
    [InlineData("seven-bit", "41 C1 FF 00 80 7F", "41 41 7F 00 00 7F")]
    [InlineData("cut-at-1a", "41 42 1A 43 44 45", "41 42 FF FF FF FF")]
    [InlineData("intel-hex", "41 42 43 44 45 46", "3A 30 36 30 30 30")]
    [InlineData("s-record", "41 42 43 44 45 46", "53 30 30 33 30 30")]
    public void A_file_taken_for_text(string how, string image, string expected) =>
        Assert.Equal(Hex(expected), Read(Hex(image), new Fault("file-damaged-as-text") { How = how }));

    [Fact]
    public void Every_kind_has_a_stage_and_acts()
    {
        var random = new SmallRandom(3);
        foreach (var kind in FaultStages.Kinds)
        {
            var draw = new FaultDraw(new ChipShape(8), Image, random);
            Assert.NotEqual(Image, Read(Image, draw.Of(kind)));
        }
    }

    private static byte[] Hex(string text) => Convert.FromHexString(text.Replace(" ", "", StringComparison.Ordinal));
}
