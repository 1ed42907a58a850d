using Cartwright.Headers;
using Cartwright.Platforms.GameBoy;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

public sealed class GameBoyRoundTripTests
{
    public static TheoryData<string> Programs { get; } = new("blank", "flag", "code", "noise", "filled");

    [Property]
    public void Every_field_gives_back_the_bits_it_owns(int seed)
    {
        var random = new Random(seed);
        foreach (var field in new GameBoyPlatform().Layouts.SelectMany(layout => layout.Headers).SelectMany(table => table.Fields))
        {
            var bytes = new byte[field.Length];
            random.NextBytes(bytes);
            AssertGivenBack(field, bytes);
        }
    }

    [Fact]
    public void Every_value_of_a_byte_is_given_back()
    {
        foreach (var field in GameBoyHeader.Main.Fields.Where(field => field.Length == 1))
        {
            for (var value = 0; value <= 0xFF; value++)
                AssertGivenBack(field, [(byte)value]);
        }
    }

    [Fact]
    public void Text_of_all_kinds_is_given_back()
    {
        foreach (var field in GameBoyHeader.Main.Fields.Where(field => field.Name is "title" or "newLicensee" or "manufacturerCode"))
        {
            AssertGivenBack(field, TestBytes.All(0x20, field.Length));
            AssertGivenBack(field, TestBytes.All((byte)'Q', field.Length));
            AssertGivenBack(field, TestBytes.All(0x00, field.Length));
            AssertGivenBack(field, [(byte)'Q', .. TestBytes.All(0x20, field.Length - 1)]);
            AssertGivenBack(field, [0x00, .. TestBytes.All((byte)'Q', field.Length - 1)]);
        }
    }

    [Fact]
    public void The_bitmap_is_given_back_as_a_word() => AssertGivenBack(GameBoyHeader.Main.Fields.Single(field => field.Name == "bitmap"), BootBitmap.Bytes.ToArray());

    [Theory]
    [MemberData(nameof(Programs))]
    public void What_a_reader_finds_builds_the_same_ROM(string program)
    {
        var compared = 0;
        for (var seed = 0; seed < 400; seed++)
            compared += AssertSameAgain(program, new Random(seed)) ? 1 : 0;

        Assert.InRange(compared, 150, 400);
    }

    // False where nobody has decided between program and manifest, which is no build at all, and for what no reader can tell: a code right behind 11 letters reads as a title of 15, of which the program holds a part to keep.
    private static bool AssertSameAgain(string program, Random random)
    {
        var bytes = Make(program, random);
        var settings = Settings(random);
        bool? keep = random.Next(3) switch { 0 => true, 1 => false, _ => null };
        var title = random.Next(2) == 0 ? null : Letters(random, 16);
        if (Build(bytes, title, keep, settings) is not { } first)
            return false;

        if (keep == true && settings.ContainsKey("manufacturerCode") && !TitleForm.LooksLikeCode(first.AsSpan(0x100)))
            return false;

        var read = GameBoyChecksumTests.Read(first).Entries.ToDictionary(entry => entry.Field.Name, entry => entry.Text);
        var second = Build(bytes, title, keep, read)!;
        Assert.True(first.AsSpan().SequenceEqual(second), string.Join(", ", settings.Select(row => $"{row.Key}={row.Value}")) + $" title={title} keep={keep}");
        return true;
    }

    private static byte[]? Build(byte[] program, string? title, bool? keep, Dictionary<string, string> settings)
    {
        var bench = new RomBench(new GameBoyPlatform()) { Title = title }.Program("rom", 0, program).Keep(keep);
        foreach (var (field, text) in settings)
            bench.Header(field, text);

        var rom = bench.TryAssemble()!.Bytes("rom").ToArray();
        return bench.Codes().Contains(HeaderFindings.Clash.Code) ? null : rom;
    }

    private static byte[] Make(string program, Random random)
    {
        var bytes = GameBoy.Programs.Whole();
        var header = bytes.AsSpan(0x100, 0x50);
        switch (program)
        {
            case "flag":
                header[0x43] = 0x80;
                break;
            case "code":
                "WXYZ"u8.CopyTo(header[0x3F..]);
                break;
            case "noise":
                random.NextBytes(header);
                break;
            case "filled":
                header.Fill(0xFF);
                break;
            default:
                break;
        }

        return bytes;
    }

    private static Dictionary<string, string> Settings(Random random)
    {
        var all = new Dictionary<string, string>
        {
            ["entry"] = Convert.ToHexString([.. Enumerable.Range(0, 4).Select(_ => (byte)random.Next(256))]),
            ["bitmap"] = random.Next(3) switch { 0 => "write", 1 => "keep", _ => Convert.ToHexString(TestBytes.L(48)) },
            ["title"] = Letters(random, 12),
            ["manufacturerCode"] = Letters(random, 5),
            ["cgbFlag"] = Pick(random, "none", "compatible", "only", "0x84", "0x41"),
            ["newLicensee"] = Letters(random, 3),
            ["sgbFlag"] = Pick(random, "none", "sgb", "0x58"),
            ["cartridgeType"] = random.Next(2) == 0 ? $"0x{random.Next(0x0E, 256):X2}" : Pick(random, [.. CartridgeTypes.All.Where(type => type.Controller != BankControllers.Mmm01).Select(type => type.Name)]),
            ["romSize"] = Pick(random, "32KiB", "raw 0x54"),
            ["saveRam"] = Pick(random, "0", "8KiB", "32KiB", "64KiB", "128KiB", "2KiB", "raw 0x07"),
            ["destination"] = Pick(random, "japan", "overseas", "0xD1"),
            ["oldLicensee"] = Pick(random, "see-new-licensee", "0x00", "0x01"),
            ["version"] = Pick(random, "0", "7", "255"),
        };
        return all.Where(_ => random.Next(2) == 0).ToDictionary();
    }

    // Fewer letters than the limit; at the limit the shortest form of the field may refuse them.
    private static string Letters(Random random, int limit) => new([.. Enumerable.Range(0, random.Next(limit)).Select(_ => (char)random.Next(0x20, 0x5B))]);

    private static string Pick(Random random, params string[] words) => words[random.Next(words.Length)];

    private static void AssertGivenBack(HeaderField field, byte[] bytes)
    {
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        var text = field.Codec.Read(bytes);
        var written = bytes.Select(value => (byte)~value).ToArray();
        Assert.Null(field.Codec.Write(text, written));
        for (var i = 0; i < bytes.Length; i++)
            Assert.True(written[i] == (byte)((bytes[i] & mask[i]) | (~bytes[i] & ~mask[i])), $"{field.Name}: {text}");
    }
}
