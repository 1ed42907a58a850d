using System.Buffers.Binary;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.Snes;
using Cartwright.Tests.Platforms.Snes;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>SNES images: the points of each test, ties between places, prefixes and banks taken apart (SNESdev Wiki, ROM header; fullsnes, cartridge chapters).</summary>
public sealed class SnesRecognitionTests
{
    private const int Kib = 1 << 10;
    private const int Mib = 1 << 20;

    // Checksum pair 4, sum 6, mode 3, RESET 2, opcode 2, ROM size 2, RAM, country and title 1 each.
    private const int Clean = 22;

    [Theory]
    [InlineData("lorom", 32 * Kib)]
    [InlineData("lorom", 96 * Kib)]
    [InlineData("lorom", 2 * Mib)]
    [InlineData("hirom", 64 * Kib)]
    [InlineData("hirom", 3 * Mib)]
    [InlineData("exhirom", 6 * Mib)]
    [InlineData("exlorom", 5 * Mib)]
    public void A_clean_image_of_every_mapping_has_all_points_but_the_game_codes(string name, int length)
    {
        var image = Image(SnesMapping.Named(name), length);
        var claim = Ranked.Decided("snes", image);
        Assert.Equal((Certainty.Structural, name, Clean, ImageOrder.Console, 0), (claim.Certainty, claim.Variant, claim.Score, claim.Order, claim.PrefixLength));
        Assert.Contains($"{Clean} points, of which 8 are enough", claim.Reason, StringComparison.Ordinal);
        Assert.Contains("RESET $8000 with opcode 78 there, the checksum is right", claim.Reason, StringComparison.Ordinal);

        var prefixed = Ranked.Decided("snes", [.. TestBytes.L(0x200), .. image]);
        Assert.Equal((name, Clean, 0x200), (prefixed.Variant, prefixed.Score, prefixed.PrefixLength));
    }

    // One thing is changed, and the sum stored anew: the points of just that test are gone, or added.
    [Theory]
    [InlineData(0x7FD5, new byte[] { 0x21 }, -5)]
    [InlineData(0x7FD5, new byte[] { 0x60 }, -5)]
    [InlineData(0x7FD5, new byte[] { 0x00 }, -5)]
    [InlineData(0x7FD5, new byte[] { 0x30 }, 0)]
    [InlineData(0x7FD5, new byte[] { 0x23 }, 0)]
    [InlineData(0x7FFC, new byte[] { 0xFF, 0x7F }, -8)]
    [InlineData(0x0000, new byte[] { 0x18 }, 0)]
    [InlineData(0x0000, new byte[] { 0x38 }, 0)]
    [InlineData(0x0000, new byte[] { 0x9C }, 0)]
    [InlineData(0x0000, new byte[] { 0x4C }, 0)]
    [InlineData(0x0000, new byte[] { 0x5C }, 0)]
    [InlineData(0x0000, new byte[] { 0xEA }, -2)]
    [InlineData(0x0000, new byte[] { 0x00 }, -4)]
    [InlineData(0x0000, new byte[] { 0x02 }, -4)]
    [InlineData(0x0000, new byte[] { 0xDB }, -4)]
    [InlineData(0x0000, new byte[] { 0xFF }, -4)]
    [InlineData(0x7FD7, new byte[] { 0x04 }, -2)]
    [InlineData(0x7FD7, new byte[] { 0x06 }, -2)]
    [InlineData(0x7FD7, new byte[] { 0x0E }, -2)]
    [InlineData(0x7FD8, new byte[] { 0x08 }, 0)]
    [InlineData(0x7FD8, new byte[] { 0x09 }, -1)]
    [InlineData(0x7FD9, new byte[] { 0x14 }, 0)]
    [InlineData(0x7FD9, new byte[] { 0x15 }, -1)]
    [InlineData(0x7FC3, new byte[] { 0xB1 }, 0)]
    [InlineData(0x7FC3, new byte[] { 0x1F }, -1)]
    [InlineData(0x7FC3, new byte[] { 0x80 }, -1)]
    [InlineData(0x7FDA, new byte[] { 0x33 }, 0)]
    public void Each_test_has_its_points(int at, byte[] bytes, int points)
    {
        var image = Image(SnesMapping.Lorom, 32 * Kib);
        bytes.CopyTo(image, at);
        StoreSum(image, SnesMapping.Lorom);
        Assert.Equal(Clean + points, Ranked.Decided("snes", image).Score);
    }

    [Fact]
    public void A_game_code_of_letters_has_a_point()
    {
        var image = Image(SnesMapping.Lorom, 32 * Kib);
        "LT  "u8.CopyTo(image.AsSpan(0x7FB2));
        image[0x7FDA] = 0x33;
        StoreSum(image, SnesMapping.Lorom);
        Assert.Equal(Clean + 1, Ranked.Decided("snes", image).Score);
    }

    [Theory]
    [InlineData(new byte[] { 0x34, 0x12, 0xCB, 0xED }, 16, "checksum and complement belong together, but the sum is another")]
    [InlineData(new byte[] { 0xFF, 0xFF, 0x00, 0x00 }, 13, "checksum and complement belong together, but the sum is another")]
    [InlineData(new byte[] { 0x00, 0x00, 0xFF, 0xFF }, 13, "checksum and complement belong together, but the sum is another")]
    [InlineData(new byte[] { 0x43, 0x43, 0x43, 0x53 }, 12, "no checksum was stored")]
    [InlineData(new byte[] { 0x00, 0x00, 0x00, 0x00 }, 12, "no checksum was stored")]
    public void A_checksum_that_was_never_filled_in_does_not_matter(byte[] pair, int score, string told)
    {
        var image = Image(SnesMapping.Lorom, 32 * Kib);
        pair.CopyTo(image, 0x7FDC);
        var claim = Ranked.Decided("snes", image);
        Assert.Equal(score, claim.Score);
        Assert.Contains(told, claim.Reason, StringComparison.Ordinal);
    }

    // Letters for a checksum and a wrong size code: the least that homebrew images were seen with.
    [Fact]
    public void The_threshold_is_eight()
    {
        var image = Image(SnesMapping.Lorom, 32 * Kib);
        "CCCS"u8.CopyTo(image.AsSpan(0x7FDC));
        image[0x7FD7] = 0x02;
        Assert.Equal(10, Ranked.Decided("snes", image).Score);
        image[0x7FC0] = 0x00;
        image[0x7FD8] = 0xFF;
        Assert.Equal(8, Ranked.Decided("snes", image).Score);
        image[0x7FD9] = 0xFF;
        Assert.Null(Ranked.By("snes", image));
    }

    // Two headers of equal points, both sums right: an odd number of 32 KiB cannot be banks of 64 KiB.
    [Theory]
    [InlineData("lorom", 96 * Kib)]
    [InlineData("exhirom", 128 * Kib)]
    public void A_tie_goes_to_the_mapping_whose_banks_fit(string name, int rest)
    {
        var image = Image(SnesMapping.Exhirom, (4 * Mib) + rest);
        Copy(image, SnesMapping.Exhirom, SnesMapping.Lorom, mode: 0x20);
        Assert.Equal((name, Clean), (Ranked.Decided("snes", image).Variant, Ranked.Decided("snes", image).Score));
    }

    [Fact]
    public void A_tie_goes_to_the_place_whose_sum_is_right()
    {
        var image = Image(SnesMapping.Hirom, 128 * Kib);
        Copy(image, SnesMapping.Hirom, SnesMapping.Lorom, mode: 0x20);
        // The sum's six points against opcode, country, title and RAM size.
        image[SnesMapping.Lorom.Title + 0x1C] ^= 0xFF;
        image[SnesMapping.Lorom.Title + 0x1E] ^= 0xFF;
        image[0x8000] = 0xFF;
        image[SnesMapping.Hirom.Title + 0x18] = 0xFF;
        image[SnesMapping.Hirom.Title + 0x19] = 0xFF;
        StoreSum(image, SnesMapping.Hirom);
        var claim = Ranked.Decided("snes", image);
        Assert.Equal(("hirom", Clean - 6), (claim.Variant, claim.Score));
        StoreSum(image, SnesMapping.Lorom);
        Assert.Equal("lorom", Ranked.Decided("snes", image).Variant);
    }

    // The copy some ROMs of this kind have for readers who look there only (from memory).
    [Fact]
    public void A_copy_of_the_header_does_not_make_lorom_of_exlorom()
    {
        var image = Image(SnesMapping.Exlorom, 5 * Mib);
        Copy(image, SnesMapping.Exlorom, SnesMapping.Lorom, mode: 0x30);
        Assert.Equal("exlorom", Ranked.Decided("snes", image).Variant);
    }

    [Theory]
    [InlineData(128 * Kib, true)]
    [InlineData(128 * Kib, false)]
    [InlineData(1280 * Kib, true)]
    [InlineData(3 * Mib, true)]
    [InlineData(3 * Mib, false)]
    public void Banks_taken_apart_are_put_together(int length, bool isSummed)
    {
        var image = Image(SnesMapping.Hirom, length);
        if (!isSummed)
            image.AsSpan(0xFFDC, 4).Clear();

        var claim = Ranked.Decided("snes", Ranked.Arranged(image, ImageOrder.UpperLowerHalves));
        Assert.Equal((ImageOrder.UpperLowerHalves, "hirom", isSummed ? Clean : 12), (claim.Order, claim.Variant, claim.Score));
        Assert.Contains("upper halves", claim.Reason, StringComparison.Ordinal);

        var prefixed = Ranked.Decided("snes", Ranked.Arranged(image, ImageOrder.UpperLowerHalves, new byte[0x200]));
        Assert.Equal((ImageOrder.UpperLowerHalves, 0x200), (prefixed.Order, prefixed.PrefixLength));
    }

    // A header of HiROM at LoROM's place is not enough: it must be better, once the banks are put together, than the one in place.
    [Fact]
    public void A_second_header_takes_nothing_apart()
    {
        var image = Image(SnesMapping.Hirom, 128 * Kib);
        Copy(image, SnesMapping.Hirom, SnesMapping.Lorom, mode: 0x21);
        image.AsSpan(0x7FDC, 4).Clear();
        StoreSum(image, SnesMapping.Hirom);
        var claim = Ranked.Decided("snes", image);
        Assert.Equal((ImageOrder.Console, "hirom", Clean), (claim.Order, claim.Variant, claim.Score));
        image.AsSpan(0xFFC0, 0x40).Clear();
        Assert.Equal(ImageOrder.UpperLowerHalves, Ranked.Decided("snes", image).Order);
    }

    [Fact]
    public void More_than_the_console_can_address_is_none() =>
        Assert.Null(Ranked.By("snes", [.. Image(SnesMapping.Lorom, 4 * Mib), .. new byte[5 * Mib]]));

    private static byte[] Image(SnesMapping mapping, int length)
    {
        var image = TestBytes.L(length);
        SnesBench.Bank(mapping).CopyTo(image, mapping.Start);
        var title = image.AsSpan(mapping.Title);
        "LANTERN TIDE         "u8.CopyTo(title);
        title[0x15] = (byte)(0x20 | mapping.Modes[0]);
        title[0x17] = (byte)(System.Numerics.BitOperations.Log2(System.Numerics.BitOperations.RoundUpToPowerOf2((uint)length)) - 10);
        StoreSum(image, mapping);
        return image;
    }

    private static void Copy(byte[] image, SnesMapping from, SnesMapping to, byte mode)
    {
        image.AsSpan(from.Title, 0x40).CopyTo(image.AsSpan(to.Title));
        image[to.Title + 0x15] = mode;
        image[to.Offset(0x8000)] = 0x78;
        // Any pair that belongs together adds the same to the sum, so that both can be right.
        StoreSum(image, from);
        StoreSum(image, to);
    }

    // The rule of the sum in its plainest form: every address of the completed image, one by one.
    private static void StoreSum(byte[] image, SnesMapping mapping)
    {
        var pair = image.AsSpan(mapping.Title + 0x1C);
        ((ReadOnlySpan<byte>)[0xFF, 0xFF, 0x00, 0x00]).CopyTo(pair);
        var sum = 0u;
        var size = System.Numerics.BitOperations.RoundUpToPowerOf2((uint)image.Length);
        for (var address = 0u; address < size; address++)
            sum += image[Mirror.Map(address, image.Length)];

        BinaryPrimitives.WriteUInt16LittleEndian(pair[2..], (ushort)sum);
        BinaryPrimitives.WriteUInt16LittleEndian(pair, (ushort)~sum);
    }
}
