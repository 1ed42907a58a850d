namespace Cartwright.Platforms.Nes;

/// <summary>One row of the mapper table: what the board's bank logic can do with PRG and CHR, and what it shows at power-on.</summary>
/// <param name="Number">The mapper number, 0 to 4095.</param>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Board">Boards that have it, as the trade calls them.</param>
/// <param name="PrgMax">Most PRG in bytes the customary boards take.</param>
/// <param name="PrgBanking">The PRG windows in KiB, from $8000 up; F marks a fixed one.</param>
/// <param name="PrgBank">Bytes of a PRG bank, the unit bank numbers count; 0 when there are no banks.</param>
/// <param name="Reset">Where the RESET vector must be.</param>
/// <param name="Chr">What the board has for CHR.</param>
/// <param name="ChrMax">Most CHR in bytes; 0 for none.</param>
/// <param name="ChrBanking">The CHR windows in KiB, from PPU $0000 up.</param>
public sealed record NesMapper(
    int Number,
    string Name,
    string Board,
    long PrgMax,
    string PrgBanking,
    int PrgBank,
    NesReset Reset,
    ChrKind Chr,
    long ChrMax,
    string ChrBanking)
{
    /// <summary>The submapper this row is for; null when it is for all without a row of their own.</summary>
    public int? Submapper { get; init; }

    /// <summary>Most PRG in bytes by extensions that need a board with more latch bits; 0 when there are none.</summary>
    public long PrgExtended { get; init; }

    /// <summary>Bytes before $10000 that always show the last bank; 0 when none do.</summary>
    public int FixedTop { get; init; }

    /// <summary>True when the first bank always shows at $8000.</summary>
    public bool FixedFirst { get; init; }

    /// <summary>CHR RAM in bytes a board of this mapper has.</summary>
    public long ChrRam { get; init; } = 8 << 10;

    /// <summary>Whether writes to the mapper meet the ROM's own bytes.</summary>
    public BusConflicts Conflicts { get; init; }

    /// <summary>True when progress can be kept without save RAM: the console rewrites the PRG chip, or the mapper has memory of its own.</summary>
    public bool KeepsOwnSave { get; init; }

    /// <summary>Most PRG in bytes, extensions included.</summary>
    public long PrgLargest => Math.Max(PrgMax, PrgExtended);

    /// <summary>True when a ROM may hold CHR.</summary>
    public bool TakesChrRom => Chr is ChrKind.Rom or ChrKind.RomOrRam or ChrKind.RomAndRam;

    /// <summary>True when a board may have CHR RAM.</summary>
    public bool TakesChrRam => Chr is ChrKind.Ram or ChrKind.RomOrRam or ChrKind.RomAndRam;

    /// <summary>Bytes at the top that are known to be visible at power-on whatever the mapper's registers hold.</summary>
    public int SureTop => Reset.EveryBank ? 0 : Reset.Span;
}
