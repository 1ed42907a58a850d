using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.GameBoy;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>Game Boy images: boot bitmap, checksum and codes of the header (Pan Docs, The Cartridge Header; MBC1; MMM01).</summary>
public sealed class GameBoyRecognitionTests
{
    private const int Bank = 256 << 10;

    [Theory]
    [InlineData(ImageOrder.Console)]
    [InlineData(ImageOrder.ByteSwapped)]
    public void The_bitmap_is_exact_in_either_order(ImageOrder order)
    {
        var claim = Ranked.Decided("gb", Ranked.Arranged(Finished(), order));
        Assert.Equal((Certainty.Exact, order, "gb"), (claim.Certainty, claim.Order, claim.Variant));
        Assert.Contains("0x0104", claim.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bitmap_with_a_wrong_byte_is_not_exact()
    {
        var image = Finished();
        image[0x133] ^= 1;
        Assert.Equal(Certainty.Structural, Ranked.Decided("gb", image).Certainty);
    }

    [Fact]
    public void An_MMM01_cart_is_told_by_its_type_and_its_menu()
    {
        var program = GameBoy.Programs.Whole(0x20000);
        GameBoy.Programs.Whole().CopyTo(program, 0x18000);
        var image = new RomBench(new GameBoyPlatform()).Program("rom", 0, program).Header("cartridgeType", "mmm01").Assemble().Bytes("rom").ToArray();
        Assert.Equal("mmm01", Ranked.Decided("gb", image).Variant);
        // Any program may stand at the start: the console does not look there first.
        image.AsSpan(0x100, 0x50).Clear();
        var claim = Ranked.Decided("gb", image);
        Assert.Equal((Certainty.Exact, "mmm01", 0), (claim.Certainty, claim.Variant, claim.PrefixLength));
        Assert.Contains("0x018104", claim.Reason, StringComparison.Ordinal);
        // Only a power of two ends with a menu.
        Assert.Null(Ranked.By("gb", image.AsSpan(0x8000)));
    }

    [Fact]
    public void A_board_that_switches_32_KiB_is_no_MMM01()
    {
        var image = Finished("latch-32k");
        Assert.Equal("gb", Ranked.Decided("gb", [.. image, .. image]).Variant);
    }

    [Fact]
    public void Thirty_two_KiB_behind_a_prefix_are_no_menu()
    {
        var claim = Ranked.Decided("gb", [.. new byte[0x200], .. Finished()]);
        Assert.Equal((0x200, "gb"), (claim.PrefixLength, claim.Variant));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Several_games_on_MBC1_start_at_banks_of_their_own(int game)
    {
        var image = new byte[4 * Bank];
        Finished().CopyTo(image, game * Bank);
        var claim = Ranked.Decided("gb", image);
        Assert.Equal((Certainty.Exact, "gb"), (claim.Certainty, claim.Variant));
        Assert.Contains($"0x{(game * Bank) + 0x104:X6}", claim.Reason, StringComparison.Ordinal);
        Assert.Null(Ranked.By("gb", [.. image, .. new byte[4 * Bank]]));
    }

    [Fact]
    public void A_right_checksum_and_legal_codes_are_structural()
    {
        var image = WithoutBitmap();
        var claim = Ranked.Decided("gb", image);
        Assert.Equal((Certainty.Structural, "gb", ImageOrder.Console), (claim.Certainty, claim.Variant, claim.Order));
        Assert.Contains("type 00, ROM 00, RAM 00", claim.Reason, StringComparison.Ordinal);
        Assert.DoesNotContain("the file has", claim.Reason, StringComparison.Ordinal);
        Assert.Contains("the ROM code says 32 KiB, the file has 64 KiB", Ranked.Decided("gb", [.. image, .. image]).Reason, StringComparison.Ordinal);
    }

    // 0x14C and 0x14D change places, and the sum of 0x134-0x14D stays: the reason has to say that the order is open.
    [Fact]
    public void Without_the_bitmap_the_order_does_not_show()
    {
        var image = WithoutBitmap();
        var swapped = Ranked.By("gb", Ranked.Arranged(image, ImageOrder.ByteSwapped));
        Assert.Equal(Certainty.Structural, swapped?.Certainty);
        Assert.Contains("the order of bytes does not show", swapped!.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0x147, 0x04)]
    [InlineData(0x148, 0x09)]
    [InlineData(0x148, 0x52)]
    [InlineData(0x149, 0x06)]
    public void A_code_that_is_not_legal_speaks_against_it(int at, byte code)
    {
        var image = WithoutBitmap();
        image[0x14D] -= (byte)(code - image[at]);
        image[at] = code;
        Assert.True(GameBoyChecksums.HeaderIsRight(image.AsSpan(0x100)));
        Assert.Null(Ranked.By("gb", image));
    }

    [Theory]
    [InlineData("00 C3 50 01")]
    [InlineData("F3 C3 50 01")]
    [InlineData("C3 50 01 00")]
    [InlineData("18 60 00 00")]
    public void A_program_whose_header_was_not_finished_is_a_candidate(string entry)
    {
        var image = Unfinished(entry);
        Assert.Equal(Certainty.Candidate, Ranked.By("gb", image)?.Certainty);
        Assert.Null(Ranked.By("gb", image.AsSpan()[..^1]));
        image[0x140] = 0x07;
        Assert.Null(Ranked.By("gb", image));
    }

    [Theory]
    [InlineData("3E 01 C3 50")]
    [InlineData("FF FF FF FF")]
    [InlineData("00 00 00 00")]
    public void Other_entries_are_not(string entry) => Assert.Null(Ranked.By("gb", Unfinished(entry)));

    // Codes that are all zero prove nothing: the jump has to lead to a program.
    [Theory]
    [InlineData("C3 50 01 00", 0x31, true)]
    [InlineData("C3 50 01 00", 0x00, false)]
    [InlineData("C3 50 01 00", 0xFF, false)]
    [InlineData("C3 50 81 00", 0x31, false)]
    public void A_blank_header_needs_a_jump_to_a_program(string entry, byte first, bool found)
    {
        var image = new byte[0x8000];
        Hex(entry).CopyTo(image, 0x100);
        image[0x150] = first;
        Assert.Equal(found, Ranked.By("gb", image) is not null);
    }

    private static byte[] Finished(string type = "rom") => GameBoy.Programs.Bench().Header("cartridgeType", type).Assemble().Bytes("rom").ToArray();

    private static byte[] WithoutBitmap()
    {
        var image = Finished();
        image.AsSpan(0x104, 48).Clear();
        return image;
    }

    private static byte[] Unfinished(string entry)
    {
        var image = WithoutBitmap();
        Hex(entry).CopyTo(image, 0x100);
        image[0x14D] ^= 0xFF;
        return image;
    }

    private static byte[] Hex(string digits) => Convert.FromHexString(digits.Replace(" ", "", StringComparison.Ordinal));
}
