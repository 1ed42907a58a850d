using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>A number of the CART container: which board a ROM is for (CAR extension page; CAR).</summary>
/// <param name="Number">The number.</param>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="KiB">Size of the ROM in KiB.</param>
/// <param name="Console">True for the Atari 5200.</param>
internal sealed record CartType(int Number, string Name, int KiB, bool Console = false)
{
    public static ImmutableArray<CartType> All { get; } =
    [
        new(1, "standard-8k", 8),
        new(2, "standard-16k", 16),
        new(3, "oss-16k-034m", 16),
        new(4, "5200-32k", 32, Console: true),
        new(5, "db-32k", 32),
        new(6, "5200-16k-two-chip", 16, Console: true),
        new(7, "5200-40k", 40, Console: true),
        new(8, "williams-64k", 64),
        new(9, "express-64k", 64),
        new(10, "diamond-64k", 64),
        new(11, "sdx-64k", 64),
        new(12, "xegs-32k", 32),
        new(13, "xegs-64k", 64),
        new(14, "xegs-128k", 128),
        new(15, "oss-16k-one-chip", 16),
        new(16, "5200-16k-one-chip", 16, Console: true),
        new(17, "atrax-128k", 128),
        new(18, "bank-switched-40k", 40),
        new(19, "5200-8k", 8, Console: true),
        new(20, "5200-4k", 4, Console: true),
        new(21, "right-slot-8k", 8),
        new(22, "williams-32k", 32),
        new(23, "xegs-256k", 256),
        new(24, "xegs-512k", 512),
        new(25, "xegs-1024k", 1024),
        new(26, "megacart-16k", 16),
        new(27, "megacart-32k", 32),
        new(28, "megacart-64k", 64),
        new(29, "megacart-128k", 128),
        new(30, "megacart-256k", 256),
        new(31, "megacart-512k", 512),
        new(32, "megacart-1024k", 1024),
        new(33, "switchable-xegs-32k", 32),
        new(34, "switchable-xegs-64k", 64),
    ];

    /// <summary>The words of one of the two machines.</summary>
    public static NamedValues Words(bool console) =>
        new([.. All.Where(row => row.Console == console).Select(static row => new NamedValue((ulong)row.Number, row.Name))]);
}
