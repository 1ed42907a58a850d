using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Msx;

/// <summary>Where a board shows the ROM: at fixed addresses, or in banks.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Header">Offset of the header in the ROM.</param>
/// <param name="Sizes">The sizes of the ROM.</param>
/// <param name="Addresses">The addresses of the ROM.</param>
/// <param name="Meaning">How the board is made.</param>
public sealed record MsxMapping(string Name, int Header, SizeRule Sizes, AddressMap Addresses, string Meaning)
{
    /// <summary>First address of a cartridge's customary page.</summary>
    public const int PageOne = 0x4000;

    /// <summary>Bytes of a page, and of the bank of some mappers.</summary>
    public const int PageSize = 0x4000;

    private const int SmallBank = 0x2000;
    private const int PageTwo = 0x8000;
    private const int PageThree = 0xC000;
    private const int Top = 0x10000;

    private static readonly ImmutableArray<(long Last, string What)> Elsewhere =
        [(0x3FFF, "BIOS"), (0x7FFF, "before the ROM"), (0xFFFF, "RAM or behind the ROM")];

    /// <summary>Bytes of a bank; 0 on boards without.</summary>
    public int BankSize { get; init; }

    /// <summary>The values that load the registers of a mapper that differ from others', for guesses from a program's code (from memory).</summary>
    public ImmutableArray<int> Registers { get; init; } = [];

    /// <summary>All of them, the customary one first.</summary>
    public static ImmutableArray<MsxMapping> All { get; } =
    [
        Plain("page-1", PageOne, Top, 0, [8 << 10, 16 << 10, 32 << 10, 48 << 10], "8, 16, 32 or 48 KiB", "no banks: from $4000 on"),
        Plain("page-2", PageTwo, PageThree, 0, [8 << 10, 16 << 10], "8 or 16 KiB", "no banks: from $8000 on, for BASIC programs and an INIT there"),
        Plain("page-0", 0, Top, PageOne, [48 << 10, 64 << 10], "48 or 64 KiB", "no banks: from $0000 on, the header at 0x4000"),
        Banked("ascii8", SmallBank, 0xFF, "banks of 8 KiB at $4000, $6000, $8000 and $A000 set by $6000, $6800, $7000 and $7800") with { Registers = [0x6000, 0x6800, 0x7000, 0x7800] },
        Banked("ascii16", PageSize, 0x7F, "banks of 16 KiB at $4000 and $8000 set by $6000 and $7000") with { Registers = [0x6000, 0x7000, 0x77FF] },
        Banked("konami", SmallBank, 0x3F, "bank 0 of 8 KiB fixed at $4000, others at $6000, $8000 and $A000 set by writing there") with { Registers = [0x4000, 0x6000, 0x8000, 0xA000] },
        Banked("konami-scc", SmallBank, 0x3F, "banks of 8 KiB at $4000, $6000, $8000 and $A000 set by $5000, $7000, $9000 and $B000; 3F in $9000 shows the sound chip at $9800")
            with { Registers = [0x5000, 0x7000, 0x9000, 0xB000] },
        Banked("generic8", SmallBank, 0xFF, "banks of 8 KiB set by writing into their windows at $4000, $6000, $8000 and $A000"),
        Banked("generic16", PageSize, 0xFF, "banks of 16 KiB set by writing into their windows at $4000 and $8000"),
        Banked("zemina8", SmallBank, 0xFF, "banks of 8 KiB set by writing into their windows"),
        Banked("zemina16", PageSize, 0xFF, "banks of 16 KiB set by writing into their windows"),
        Banked("msx-dos2", PageSize, 0xFF, "a bank of 16 KiB at $4000 set by $6000, $7FFE or $7FF0", PageTwo),
    ];

    /// <summary>A mapping by name.</summary>
    /// <param name="name">The word, one of <see cref="All"/>.</param>
    public static MsxMapping Named(string name) => All.First(mapping => mapping.Name == name);

    private static MsxMapping Plain(string name, int start, int end, int header, ImmutableArray<long> sizes, string words, string meaning) =>
        new(name, header, new SizeRule(sizes, 0, words), new WindowedAddresses(MsxHeader.Region, [new AddressWindow(start, end, 0)], null, Elsewhere), meaning);

    private static MsxMapping Banked(string name, int bankSize, int lastBank, string meaning, int end = PageThree)
    {
        var largest = (long)bankSize * (lastBank + 1);
        var sizes = SizeRule.PowersOfTwo(32 << 10, largest) with
        {
            Step = bankSize,
            Words = $"a power of two from 32 KiB to {ByteSize.Words(largest)}; stated, any number of banks of {ByteSize.Words(bankSize)} up to that",
        };
        // Linkers place the first banks behind each other at the windows' addresses: common practice.
        var addresses = new WindowedAddresses(MsxHeader.Region, [new AddressWindow(PageOne, end, 0)], new BankWindow(PageOne, end, bankSize, lastBank), Elsewhere);
        return new(name, 0, sizes, addresses, meaning) { BankSize = bankSize };
    }
}
