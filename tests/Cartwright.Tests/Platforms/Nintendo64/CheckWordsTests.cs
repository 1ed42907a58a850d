using System.Globalization;
using Cartwright.Platforms.Nintendo64;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Nintendo64;

/// <summary>
/// Worked values of the check words and of the console's check of the boot code. The rules are those of "Disassembly of the N64 boot stages
/// IPL1/2/3"; the values were computed by two independently written programs that agreed.
/// </summary>
public sealed class CheckWordsTests
{
    private static readonly Dictionary<string, byte[]> Images = new()
    {
        ["pattern"] = N64Bench.Pattern(),
        ["zeros"] = new byte[N64Bench.Size],
        ["ones"] = TestBytes.All(0xFF, N64Bench.Size),
        ["counter"] = Counter(),
        ["generated"] = N64Bench.Generated(),
        ["generated, zero boot area"] = [.. new byte[0x1000], .. N64Bench.Generated().AsSpan(0x1000)],
        ["cut, zeros"] = [.. N64Bench.Generated().AsSpan(0, 0x2000), .. new byte[N64Bench.Size - 0x2000]],
        ["cut, ones"] = [.. N64Bench.Generated().AsSpan(0, 0x2000), .. TestBytes.All(0xFF, N64Bench.Size - 0x2000)],
    };

    [Theory]
    [InlineData("pattern", "D48E3CFC")]
    [InlineData("generated", "F7C85078")]
    public void The_images_are_the_worked_ones(string image, string crc) => Assert.Equal(crc, TestBytes.Crc(Images[image]));

    [Theory]
    [InlineData("pattern", "6102", "669E4DDDF55C2808")]
    [InlineData("pattern", "6103", "D424675964E01E6C")]
    [InlineData("pattern", "6105", "883AF436FCFFDE72")]
    [InlineData("pattern", "6106", "04800F9E8E7F756A")]
    [InlineData("zeros", "6102", "F8CA4DDC303A4DDC")]
    [InlineData("zeros", "6103", "A388675940EC6759")]
    [InlineData("zeros", "6105", "DF26F436DF26F436")]
    [InlineData("zeros", "6106", "04100F9E89F80F9E")]
    [InlineData("ones", "6102", "F8C24DDCC1544DDC")]
    [InlineData("ones", "6103", "A3906759A9AACEAE")]
    [InlineData("ones", "6105", "DF2EF436DF22F436")]
    [InlineData("ones", "6106", "04100F9EF83E0F9E")]
    [InlineData("counter", "6102", "F8C84DE4B04E75E2")]
    [InlineData("counter", "6103", "A3966791DF4EF328")]
    [InlineData("counter", "6105", "DF24F43E3F0E5B0A")]
    [InlineData("counter", "6106", "405F1B6E4E9E6DA0")]
    [InlineData("generated", "6102", "ECC1E9D8AD9B78AE")]
    [InlineData("generated", "6103", "D7D7CDA600D005F1")]
    [InlineData("generated", "6105", "D26D577201FEDC07")]
    [InlineData("generated", "6106", "1471481C11AB25C2")]
    [InlineData("generated, zero boot area", "6102", "ECC1E9D8AD9B78AE")]
    [InlineData("generated, zero boot area", "6103", "D7D7CDA600D005F1")]
    [InlineData("generated, zero boot area", "6105", "D26D5772165CEF47")]
    [InlineData("generated, zero boot area", "6106", "1471481C11AB25C2")]
    [InlineData("cut, zeros", "6102", "8C08164EE6DA202D")]
    [InlineData("cut, ones", "6102", "8C00164E26D8A62D")]
    public void The_words_are_the_worked_ones(string image, string chip, string words)
    {
        var computed = CheckWords.Compute(Images[image], Chip(chip));
        Assert.Equal(words, computed.ToString("X16", CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("6101", 0xF8CA4DDC)]
    [InlineData("6102", 0xF8CA4DDC)]
    [InlineData("7101", 0xF8CA4DDC)]
    [InlineData("7102", 0xF8CA4DDC)]
    [InlineData("6103", 0xA3886759)]
    [InlineData("7103", 0xA3886759)]
    [InlineData("6105", 0xDF26F436)]
    [InlineData("7105", 0xDF26F436)]
    [InlineData("6106", 0x1FEA617A)]
    [InlineData("7106", 0x1FEA617A)]
    public void The_numbers_start_from_the_seed(string chip, uint start) => Assert.Equal(start, Chip(chip).Start);

    // The same seed and the same rule.
    [Theory]
    [InlineData("6101")]
    [InlineData("7102")]
    public void Two_further_chips_have_the_words_of_the_6102(string chip)
    {
        foreach (var image in Images.Values)
            Assert.Equal(CheckWords.Compute(image, Chip("6102")), CheckWords.Compute(image, Chip(chip)));
    }

    [Fact]
    public void The_numbers_run_as_in_the_worked_trace()
    {
        var numbers = new CheckNumbers(Chip("6102").Start);
        (uint Word, string State)[] trace =
        [
            (0x9F6142E0, "982B90BC F8CA4DDD 67AB0F3C 982B90BC 67AB0F3C 00152038"),
            (0xFF1D7547, "97490603 F8CA4DDE 98B67A7B 26E634BB 0FFF7C78 DA106234"),
            (0x93475372, "2A905975 F8CA4DDF 0BF12909 74B081D8 B628767F C20834DE"),
        ];
        foreach (var (word, state) in trace)
        {
            numbers.Add(word);
            Assert.Equal(state, $"{numbers.Sum:X8} {numbers.Carries:X8} {numbers.Exclusive:X8} {numbers.Rotated:X8} {numbers.Compared:X8} {numbers.Mixed:X8}");
        }
    }

    [Theory]
    [InlineData("pattern", "812CA412AE47 08FF0CFB7E08 10FE51343C56 10659090E160")]
    [InlineData("generated", "ABD4DA7BDC80 4DB8D9D57313 7B6F2D6AE049 F5193B8EBA59")]
    [InlineData("zeros", "2982AD8C201D B30F78D0CAD9 31085BBE1381 BB2AF8DB9C3A")]
    [InlineData("ones", "0F74E8302797 A1ADBE97298A D639F0BDA20D E0FFFB7BCC91")]
    public void The_check_of_the_boot_code_is_the_worked_one(string image, string checks)
    {
        var code = Images[image].AsMemory(BootCode.Start, BootCode.Length);
        byte[] seeds = [0x3F, 0x78, 0x91, 0x85];
        Assert.Equal(checks, string.Join(' ', seeds.Select(seed => BootCheck.Compute(code.Span, seed).ToString("X12", CultureInfo.InvariantCulture))));
    }

    [Theory]
    [InlineData(0x00, "filled up with 0x00")]
    [InlineData(0xFF, "filled up with 0xFF")]
    public void The_fill_of_a_short_image_is_found_by_its_words(byte fill, string words)
    {
        var image = N64Bench.Generated()[..0x2000];
        var stored = CheckWords.Compute([.. image, .. TestBytes.All(fill, N64Bench.Size - image.Length)], Chip("6102"));
        Assert.Equal(words, CheckWords.FittingFill(image, Chip("6102"), stored));
    }

    [Fact]
    public void A_repeated_image_is_found_by_its_words()
    {
        var image = N64Bench.Generated()[..0x40000];
        var repeated = Enumerable.Repeat(image, 5).SelectMany(bytes => bytes).Take(N64Bench.Size).ToArray();
        Assert.Equal("repeated through the chip", CheckWords.FittingFill(image, Chip("6105"), CheckWords.Compute(repeated, Chip("6105"))));
        Assert.Null(CheckWords.FittingFill(image, Chip("6105"), 1));
    }

    [Property(MaxTest = 30)]
    public void One_wrong_byte_changes_the_words(int seed)
    {
        var random = new Random(seed);
        var image = Images["generated"].ToArray();
        image[random.Next(CheckWords.Start, CheckWords.End)] ^= (byte)random.Next(1, 256);
        Assert.All(BootChips.All, chip => Assert.NotEqual(CheckWords.Compute(Images["generated"], chip), CheckWords.Compute(image, chip)));
    }

    [Property(MaxTest = 30)]
    public void One_wrong_byte_of_the_boot_code_changes_its_check(int seed)
    {
        var random = new Random(seed);
        var code = N64Bench.Generated()[BootCode.Start..BootCode.End];
        code[random.Next(code.Length)] ^= (byte)random.Next(1, 256);
        Assert.NotEqual(0xABD4DA7BDC80UL, BootCheck.Compute(code, 0x3F));
    }

    internal static BootChip Chip(string name) => BootChips.All.Single(chip => chip.Is(name));

    private static byte[] Counter()
    {
        var image = new byte[N64Bench.Size];
        for (var i = CheckWords.Start; i < N64Bench.Size; i += 4)
            System.Buffers.Binary.BinaryPrimitives.WriteInt32BigEndian(image.AsSpan(i), (i - CheckWords.Start) / 4);

        return image;
    }
}
