using System.Numerics;
using Cartwright.Ordering;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class RestPlacementTests
{
    // Of a HuCard's 384 KiB (three public programs agree) in units of 64 KiB: six units, the rest selected from the ninth on. The others worked by hand.
    [Theory]
    [InlineData(6, 8, "0 1 2 3 0 1 2 3 4 5")]
    [InlineData(5, 8, "0 1 2 3 0 1 2 3 4")]
    [InlineData(3, 4, "0 1 0 1 2")]
    [InlineData(3, 8, "0 1 2")]
    [InlineData(4, 8, "0 1 2 3")]
    [InlineData(8, 8, "0 1 2 3 4 5 6 7")]
    [InlineData(12, 8, "0 1 2 3 4 5 6 7 8 9 10 11")]
    [InlineData(1, 2, "0")]
    public void Units_lie_as_worked(int length, int at, string view) =>
        Assert.Equal(view, string.Join(' ', Place([.. Enumerable.Range(0, length).Select(unit => (byte)unit)], at)));

    [Property]
    public void Taking_is_the_inverse_and_every_cell_is_the_rules(ushort size, byte bits, int seed)
    {
        var image = new byte[(size % 0x3000) + 1];
        new Random(seed).NextBytes(image);
        var at = 2 << (bits % 14);
        var placed = Place(image, at);
        var back = new byte[image.Length];
        RestPlacement.Take(placed, at, back);
        Assert.Equal(image, back);

        var isApart = image.Length > at / 2 && image.Length < at && !BitOperations.IsPow2(image.Length);
        for (var cell = 0; cell < placed.Length; cell++)
            Assert.Equal(image[!isApart ? cell : cell < at ? cell % (at / 2) : (at / 2) + cell - at], placed[cell]);
    }

    // What is seen in a chip as large as the lines reach is the rule of the banks: img[a & 3FFFF] below 80000, else img[40000 + (a & 1FFFF)].
    [Property(MaxTest = 30)]
    public void Repeated_to_the_whole_chip_it_is_the_rule_of_the_banks(byte bits)
    {
        var third = 1 << (bits % 10);
        var image = TestBytes.L(3 * third);
        var placed = Place(image, 4 * third);
        var chip = new byte[8 * third];
        Mirror.Fill(placed, chip);
        for (var a = 0; a < chip.Length; a++)
            Assert.Equal(a < 4 * third ? image[a % (2 * third)] : image[(2 * third) + (a % third)], chip[a]);
    }

    private static byte[] Place(byte[] image, int at)
    {
        var placed = new byte[RestPlacement.Length(image.Length, at)];
        RestPlacement.Place(image, at, placed);
        return placed;
    }
}
