using Cartwright.FaultSimulator;
using Cartwright.ReadBacks;
using Xunit;

namespace Cartwright.Tests.ReadBacks;

/// <summary>What an image could not show.</summary>
public sealed class ImageDiagnosisTests
{
    private static readonly WordShape Bytes = new(8, HighFirst: false);

    private static ImageDiagnosis Of(byte[] image, WritingWorld world = default) => ImageDiagnosis.Of(image, Bytes, world, TestContext.Current.CancellationToken);

    [Fact]
    public void An_image_of_chance_shows_every_fault()
    {
        var diagnosis = Of(new SmallRandom(1).Bytes(2048));
        Assert.True(diagnosis.ShowsAll);
        // For 11 lines and 8: 3 of each line, 3 of each pair, the bus turned round and in halves, and 2 of each data line with each address line.
        Assert.Equal((3 * 11) + (3 * 55) + (3 * 8) + (3 * 28) + 2 + (2 * 88), diagnosis.Tried);
    }

    [Fact]
    public void An_image_stored_twice_hides_its_top_line_and_nothing_else()
    {
        var half = new SmallRandom(2).Bytes(1024);
        var diagnosis = Of([.. half, .. half]);
        Assert.Equal(["address-inverted A10", "address-stuck-high A10", "address-stuck-low A10"], diagnosis.Invisible.Select(static fault => fault.ToString()).Order(StringComparer.Ordinal));
    }

    // A worked example in 16 words: an image that holds its own address cannot tell an address line from the data line of its number.
    [Fact]
    public void A_counting_image_confuses_lines_of_one_number()
    {
        var alike = Of([.. Enumerable.Range(0, 16).Select(static a => (byte)a)]).Alike;
        Assert.Contains(alike, static group => group.Select(static fault => fault.ToString()).ToHashSet().IsSupersetOf(["address-stuck-high A2", "data-stuck-high D2"]));
        Assert.Contains(alike, static group => group.Select(static fault => fault.ToString()).ToHashSet().IsSupersetOf(["address-swapped A0 A1", "data-swapped D0 D1"]));
    }

    [Fact]
    public void What_shows_in_three_words_is_weak()
    {
        var image = new byte[1024];
        Array.Fill(image, (byte)0xFF);
        (image[1], image[2], image[3]) = (0xF7, 0xF7, 0xF7);
        var diagnosis = Of(image);
        Assert.Contains(new WeakFault(Fault("data-stuck-high", "D3"), 3), diagnosis.Weak);
        Assert.Contains(Fault("data-stuck-high", "D4"), diagnosis.Invisible);
    }

    // What leaves the lines one to one comes back as it was: 15 inversions and 105 exchanges of addresses, 8 and 28 of data, two turned buses.
    [Fact]
    public void What_the_chip_was_also_written_through_does_not_show()
    {
        var diagnosis = Of(new SmallRandom(3).Bytes(32768), WritingWorld.WrittenInPlace);
        Assert.Equal((710, 158), (diagnosis.Tried, diagnosis.Invisible.Length));
        Assert.Equal((15, 105), (Count(FaultKinds.AddressInverted), Count(FaultKinds.AddressSwapped)));
        Assert.Equal((8, 28), (Count(FaultKinds.DataInverted), Count(FaultKinds.DataSwapped)));
        Assert.Equal((1, 1), (Count(FaultKinds.DataReversed), Count(FaultKinds.DataPermuted)));

        int Count(FaultKind kind) => diagnosis.Invisible.Count(fault => fault.Kind == kind);
    }

    [Fact]
    public void Samples_of_a_large_image_find_what_all_its_words_do()
    {
        var image = new byte[65536];
        Array.Fill(image, (byte)0xFF);
        new SmallRandom(5).Bytes(64).CopyTo(image, 0x8000);
        var diagnosis = Of(image);
        Assert.Contains(diagnosis.Invisible, static fault => fault.ToString() == "address-swapped A6 A7");
        Assert.DoesNotContain(diagnosis.Invisible, static fault => fault.ToString() == "address-swapped A14 A15");
    }

    private static Cartwright.ReadBacks.Fault Fault(string kind, string line) => Cartwright.ReadBacks.Fault.On(FaultKinds.Find(kind)!, [line]);
}
