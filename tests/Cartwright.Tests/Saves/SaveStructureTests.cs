using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Saves;
using Xunit;

namespace Cartwright.Tests.Saves;

public sealed class SaveStructureTests
{
    private const string Slots = """
        "slots": { "count": 2, "size": "256", "signature": { "offset": 0, "bytes": "51 53 41 56" }, "version": { "offset": 4, "highest": 2 },
          "sequence": { "offset": 6, "width": 2, "byteOrder": "little-endian" }, "check": { "kind": "crc32", "offset": 252 } }
        """;

    [Fact]
    public void Both_slots_whole_and_the_newest_named()
    {
        var (parts, codes) = Check(Slots, Save());
        Assert.Empty(codes);
        Assert.Equal([new("slot 0", 0, 256, SavePartState.Whole, 1, 0x0102), new("slot 1", 256, 256, SavePartState.Whole, 1, 0x0103)], parts);
        Assert.Equal("slot 1", SaveStructure.Newest(parts)!.Name);
    }

    [Fact]
    public void A_half_written_slot_is_named_and_the_other_is_the_newest()
    {
        var save = Save();
        save.AsSpan(256 + 64).Fill(0xFF);
        var (parts, findings) = Findings(Slots, save);
        var finding = Assert.Single(findings);
        Assert.Equal("CW9554", finding.Code);
        Assert.Contains("Slot 1", finding.Message, StringComparison.Ordinal);
        Assert.Contains("0x000040 (64 bytes)", finding.Message, StringComparison.Ordinal);
        Assert.Equal("slot 0", SaveStructure.Newest(parts)!.Name);
    }

    [Fact]
    public void Any_changed_bit_of_a_slot_is_found()
    {
        for (var offset = 0; offset < 512; offset++)
        {
            var save = Save();
            save[offset] ^= 0x10;
            Assert.Single(Check(Slots, save).Codes);
        }
    }

    [Fact]
    public void A_slot_not_used_yet_is_new()
    {
        var save = Save();
        save.AsSpan(256).Fill(0xFF);
        var (parts, codes) = Check(Slots, save);
        Assert.Empty(codes);
        Assert.Equal([SavePartState.Whole, SavePartState.New], parts.Select(part => part.State));
    }

    [Theory]
    [InlineData(0xFF)]
    [InlineData(0x00)]
    public void A_save_of_one_value_is_new(int value)
    {
        var save = new byte[512];
        save.AsSpan().Fill((byte)value);
        var (parts, codes) = Check(Slots, save);
        Assert.Equal((SavePartState.New, "CW9551"), (Assert.Single(parts).State, Assert.Single(codes)));
    }

    [Fact]
    public void A_slot_without_signature_and_no_whole_one()
    {
        var save = Save();
        (save[0], save[257]) = (0, 0);
        Assert.Equal(["CW9553", "CW9553", "CW9556"], Check(Slots, save).Codes.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_later_version_is_told()
    {
        var save = Save();
        save[4] = 3;
        Sign(save.AsSpan(0, 256));
        Assert.Equal("CW9555", Assert.Single(Check(Slots, save).Codes));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(255)]
    [InlineData(511)]
    public void A_save_that_is_cut_short_has_slots_outside(int length) => Assert.Contains("CW9552", Check(Slots, Save()[..length]).Codes);

    [Fact]
    public void A_value_behind_the_end_of_its_slot_is_told()
    {
        var text = Slots.Replace("252", "253", StringComparison.Ordinal);
        Assert.Contains("CW9552", Check(text, Save()).Codes);
    }

    [Fact]
    public void Nothing_described_is_nothing_checked() => Assert.Equal("CW9550", Assert.Single(Check("", Save()).Codes));

    [Fact]
    public void A_save_without_slots_is_checked_whole()
    {
        var (parts, codes) = Check(""" "signature": { "bytes": "51534156" }, "check": { "kind": "sum8", "offset": 4, "start": 5, "length": 2 } """, [0x51, 0x53, 0x41, 0x56, 0x0F, 0x10, 0xFF, 0x77]);
        Assert.Empty(codes);
        Assert.Equal(new SavePart("save", 0, 8, SavePartState.Whole, null, null), Assert.Single(parts));
    }

    // The check values of "123456789": Ross Williams's table of CRC algorithms for CRC-16/IBM-3740 and CRC-32; Adler-32 by RFC 1950; the sums by hand.
    [Theory]
    [InlineData(SaveCheckKind.Sum8, 0xDD)]
    [InlineData(SaveCheckKind.Sum16, 0x01DD)]
    [InlineData(SaveCheckKind.Sum32, 0x01DD)]
    [InlineData(SaveCheckKind.Crc16, 0x29B1)]
    [InlineData(SaveCheckKind.Crc32, 0xCBF43926)]
    [InlineData(SaveCheckKind.Adler32, 0x091E01DE)]
    public void Check_values_are_the_published_ones(SaveCheckKind kind, uint value) => Assert.Equal(value, SaveCheckSum.Of(kind, "123456789"u8));

    [Fact]
    public void Words_are_big_endian() =>
        Assert.Equal((0x4646U, 0x0606U), (SaveCheckSum.Of(SaveCheckKind.WordSum, [0x12, 0x34, 0x34, 0x12]), SaveCheckSum.Of(SaveCheckKind.WordXor, [0x12, 0x34, 0x14, 0x32])));

    [Theory]
    [InlineData("\"slots\": { \"size\": 16 }", "CW1004")]
    [InlineData("\"slots\": { \"count\": 0, \"size\": 16 }", "CW1006")]
    [InlineData("\"slots\": { \"count\": 257, \"size\": 16 }", "CW1006")]
    [InlineData("\"slots\": { \"count\": 2, \"size\": 0 }", "CW1006")]
    [InlineData("\"signature\": { \"bytes\": \"5\" }", "CW1006")]
    [InlineData("\"signature\": { \"bytes\": \"QS\" }", "CW1006")]
    [InlineData("\"version\": { \"width\": 2 }", "CW1004")]
    [InlineData("\"version\": { \"offset\": 0, \"width\": 3 }", "CW1006")]
    [InlineData("\"check\": { \"offset\": 0 }", "CW1004")]
    [InlineData("\"check\": { \"kind\": \"crc99\", \"offset\": 0 }", "CW1006")]
    public void What_cannot_be_a_structure_is_told(string save, string code)
    {
        var log = new FindingLog();
        Settings(save, log);
        Assert.Equal(code, Assert.Single(log.ToSorted()).Code);
    }

    private static byte[] Save()
    {
        var save = new byte[512];
        new Random(7).NextBytes(save);
        foreach (var slot in new[] { 0, 1 })
        {
            var bytes = save.AsSpan(slot * 256, 256);
            "QSAV"u8.CopyTo(bytes);
            (bytes[4], bytes[6], bytes[7]) = (1, (byte)(2 + slot), 1);
            Sign(bytes);
        }

        return save;
    }

    private static void Sign(Span<byte> slot)
    {
        slot[252..].Clear();
        BinaryPrimitives.WriteUInt32BigEndian(slot[252..], System.IO.Hashing.Crc32.HashToUInt32(slot));
    }

    private static SaveSettings? Settings(string save, FindingLog log) => ManifestReader.Read(
        "cart.json",
        Encoding.UTF8.GetBytes("""{ "cart": { "name": "lantern-tide", "platform": "md" }, "programs": [ { "file": "main.bin" } ], "save": { """ + save + " } }"),
        ManifestOverrides.None, log)?.Save;

    private static (ImmutableArray<SavePart> Parts, ImmutableArray<Finding> Findings) Findings(string save, byte[] bytes)
    {
        var log = new FindingLog();
        var settings = Settings(save, log)!;
        Assert.Equal(0, log.Count);
        return (new SaveStructure(settings).Check(bytes, new SourcePlace("x.sav"), log), log.ToSorted());
    }

    private static (ImmutableArray<SavePart> Parts, IEnumerable<string> Codes) Check(string save, byte[] bytes)
    {
        var (parts, findings) = Findings(save, bytes);
        return (parts, findings.Select(finding => finding.Code));
    }
}
