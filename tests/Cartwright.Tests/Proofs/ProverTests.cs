using System.Collections.Immutable;
using Cartwright.Chips;
using Cartwright.FaultSimulator;
using Cartwright.Proofs;
using Cartwright.ReadBacks;
using Xunit;

namespace Cartwright.Tests.Proofs;

/// <summary>Proofs of one chip, held by the simulator.</summary>
public sealed class ProverTests
{
    private const int Size = 2048;

    private static readonly byte[] Image = new SmallRandom(61).Bytes(Size);

    private static readonly ProofSubject Subject = new("U1", Image, new WordShape(8, HighFirst: false)) { Part = PartCatalog.BuiltIn.Find("AT28C16") };

    private static byte[] Read(byte[] image, params ImmutableArray<FaultSimulator.Fault> faults) => new Simulation(new Bench(new ChipShape(8)), image, faults).Read(new Reading(0));

    private static ProofResult Prove(ProofSubject subject, params ImmutableArray<byte[]> reads) =>
        Prover.Prove(subject, [.. reads.Select(static bytes => new ReadBack(bytes))], ProofSettings.None, TestContext.Current.CancellationToken);

    [Fact]
    public void An_equal_read_has_no_differences()
    {
        var proof = Prove(Subject, Image, Image);
        Assert.True(proof.Verdict.Equal);
        Assert.Equal("stable", proof.Stability);
        Assert.Equal((Size, 0, -1), (proof.Differences.WordCount, proof.Differences.WrongWords, proof.Differences.First));
    }

    [Fact]
    public void A_stuck_line_is_named_with_its_pin()
    {
        var proof = Prove(Subject, Read(Image, new FaultSimulator.Fault("address-stuck-low") { Lines = ["A7"] }));
        var fault = Assert.Single(proof.Verdict.Faults);
        Assert.Equal("U1, A7: the address line is low at the chip all the time.", FaultWords.Sentence(Subject, fault));
        // From memory: A7 is pin 1 of the 24-pin DIP, beside A6 on pin 2.
        var pin = Subject.PinsOf("A7").Single(static pin => pin.PinOut.Package == "DIP24");
        Assert.Equal((1, "A7"), (pin.Pin, pin.Signal));
        Assert.Equal([2], pin.Neighbours);
        Assert.Equal(Image.Where((value, a) => value != Image[a & ~0x80]).Count(), proof.Differences.WrongWords);
    }

    // From memory: A6 and A7 are pins 2 and 1 of the 24-pin DIP.
    [Fact]
    public void Pins_side_by_side_are_known_as_such()
    {
        var (a7, a6, a4) = (Dip("A7"), Dip("A6"), Dip("A4"));
        Assert.True(a7.IsBeside(a6));
        Assert.False(a6.IsBeside(a4));
        Assert.False(a7.IsBeside(a6 with { PinOut = a6.PinOut with { Name = "DIP28-other" } }));

        static LinePin Dip(string line) => Subject.PinsOf(line).Single(static pin => pin.PinOut.Package == "DIP24");
    }

    [Fact]
    public void Differences_are_counted_by_bank_sector_and_line()
    {
        var read = (byte[])Image.Clone();
        (read[0x105], read[0x7FF]) = ((byte)(read[0x105] ^ 0x01), (byte)(read[0x7FF] ^ 0x80));
        var map = Prove(Subject with { BankSize = 512, Part = null }, read).Differences;
        Assert.Equal((2, 0x105, Image[0x105], read[0x105]), (map.WrongWords, map.First, map.FirstExpected, map.FirstRead));
        Assert.Equal([1, 0, 0, 1], map.Banks.Select(static row => row.WrongWords));
        Assert.Equal([0, 7], map.DataLines.Where(static line => line.ReadHigh + line.ReadLow == 1).Select(static line => line.Line));
        Assert.Empty(map.Sectors);
    }

    [Fact]
    public void Sectors_are_those_of_the_part()
    {
        var part = PartCatalog.BuiltIn.Find("SST39SF010A")!;
        var image = new SmallRandom(3).Bytes(part.CapacityBytes is var bytes ? (int)bytes : 0);
        var read = (byte[])image.Clone();
        read[0x3000] ^= 0xFF;
        var map = Prove(new ProofSubject("U1", image, new WordShape(8, HighFirst: false)) { Part = part, Sectors = part.Sectors.Map }, read).Differences;
        // SST39SF010A data sheet, features: uniform 4 KByte sectors.
        Assert.Equal(32, map.Sectors.Length);
        Assert.Equal([(3, 0x3000, 4096)], map.Sectors.Where(static row => row.WrongWords == 1).Select(static row => (row.Number, row.Offset, row.Length)));
    }

    [Fact]
    public void Bytes_that_may_differ_are_right_whatever_they_are()
    {
        var unit = (byte[])Image.Clone();
        "000042"u8.CopyTo(unit.AsSpan(0x700));
        Assert.False(Prove(Subject, unit).Verdict.Equal);
        var proof = Prove(Subject with { MayDiffer = [new ByteRange(0x700, 6)] }, unit);
        Assert.True(proof.Verdict.Equal);
        Assert.Equal((6, 0), (proof.MaskedBytes, proof.Differences.WrongWords));
        unit[0x706] ^= 1;
        Assert.False(Prove(Subject with { MayDiffer = [new ByteRange(0x700, 6)] }, unit).Verdict.Equal);
    }

    [Theory]
    [InlineData("data-stuck-high", "D3")]
    [InlineData("data-stuck-low", "D0")]
    [InlineData("address-stuck-low", "A10")]
    [InlineData("address-stuck-high", "A2")]
    public void A_stuck_line_is_named_beside_a_serial_number_nobody_knows(string kind, string line)
    {
        var unit = (byte[])Image.Clone();
        "000042"u8.CopyTo(unit.AsSpan(0x700));
        var proof = Prove(Subject with { MayDiffer = [new ByteRange(0x700, 6)] }, Read(unit, new FaultSimulator.Fault(kind) { Lines = [line] }));
        Assert.Equal($"{kind} {line}", FaultWords.Names(Subject, proof.Verdict.Faults));
    }

    [Fact]
    public void A_read_of_another_length_is_not_compared_word_by_word()
    {
        var proof = Prove(Subject, Image[(Size / 2)..]);
        Assert.Equal("wrong-half", Assert.Single(proof.Verdict.Faults).Kind.Name);
        Assert.False(proof.IsComparable);
    }

    [Fact]
    public void A_search_can_be_ended()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var read = new ReadBack(new SmallRandom(99).Bytes(Size));
        Assert.Throws<OperationCanceledException>(() => Prover.Prove(Subject, [read], ProofSettings.None, stop.Token));
        Assert.Throws<OperationCanceledException>(() => ImageDiagnosis.Of(Image, Subject.Shape, WritingWorld.WrittenElsewhere, stop.Token));
    }
}
