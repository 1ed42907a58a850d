using System.Collections.Immutable;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The lock chips that homebrew cartridges use (Disassembly of the N64 boot stages IPL1/2/3).</summary>
public static class BootChips
{
    /// <summary>The chip taken when nothing says another: the usual one of homebrew.</summary>
    public static BootChip Usual { get; } = new("6102", "7101", 0x3F, 0xA536C0F1D859, 0x90BB6CB5, CheckRule.Exclusive);

    /// <summary>All of them.</summary>
    public static ImmutableArray<BootChip> All { get; } =
    [
        new("6101", null, 0x3F, 0x45CC73EE317A, 0x6170A4A1, CheckRule.Exclusive),
        Usual,
        new(null, "7102", 0x3F, 0x44160EC5D9AF, 0x009E9EA3, CheckRule.Exclusive) { FixedEntry = 0x80000480 },
        new("6103", "7103", 0x78, 0x586FD4709867, 0x0B050EE0, CheckRule.Sum) { EntryShift = 0x100000 },
        new("6105", "7105", 0x91, 0x8618A45BC2D3, 0x98BC2C86, CheckRule.Window),
        new("6106", "7106", 0x85, 0x2BBAD4E6EB74, 0xACC8580A, CheckRule.Product) { EntryShift = 0x200000 },
    ];
}
