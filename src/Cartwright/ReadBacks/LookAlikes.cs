using System.Collections.Immutable;
using static Cartwright.ReadBacks.FaultKinds;

namespace Cartwright.ReadBacks;

/// <summary>Kinds that leave the same read-back, and the observation that tells them apart.</summary>
internal static class LookAlikes
{
    private static readonly ImmutableArray<(ImmutableArray<FaultKind> Kinds, string Observation)> Rows =
    [
        ([AddressDeadWhileWriting, AddressStuckLow, AddressStuckHigh], "Read the chip on another machine: if it reads the same there, the line was dead while it was written."),
        ([AddressDeadWhileWriting, ChipTooSmall], "Read the chip's identity code and its marking: they tell its true size."),
        ([AddressStuckLow, AddressStuckHigh, Repeated, LatchDead, BusConflict, ChipTooSmall], "Read the loose chip and its identity code: right contents there mean a line or the latch of the board; all bank lines dead together mean the latch."),
        ([BytesSwapped, WordsSwapped, LanesExchanged, AddressSwapped, AddressInverted, AddressPermuted, DataPermuted, InterleaveNotDone, InterleaveDoneTwice], "Read the loose chip: if it differs from the build in the same way, the file was wrong; if it is right, the board is."),
        ([AddressInverted, AddressSwapped, AddressPermuted, HalvesExchanged, Rotated, BanksReordered], "Compare the digest of the file that was burnt with the build's record: a right file means the wiring."),
        ([Blank, BusNotDriven, StoppedEarly, NotSelectedRange, BlocksMissing], "Read the loose chip on a programmer: contents there mean that the board does not select it."),
        ([FileDamagedAsText, DataStuckLow], "Compare the digest of the file that was burnt with the build's record: a right file means the data line."),
        ([ReadTooEarly, Rotated], "Read again more slowly: a late word comes right, a rotated file does not."),
        ([NotErased, TwoChipsEnabled], "Read the loose chip: what it shows alone was not erased; if it is right, a second chip drives the bus."),
        ([SectorsUnchanged, NotErased], "Read the loose chip, and look at the sectors' protection."),
        ([CellsDamaged, UnderProgrammed], "Erase, write and read the chip once more: the same bits again are damaged, others were weakly written."),
        ([DataStuckLow, DataStuckHigh, DataOpen], TouchTheLine),
        ([AddressStuckLow, AddressStuckHigh, AddressOpen], TouchTheLine),
    ];

    private const string TouchTheLine = "Touch the line through 10 kilohms to the other level while reading: an open line follows, a stuck one does not.";

    private const string ByAnotherImage = "Read the board with the signature image in the chip: it tells these apart in one read.";

    /// <summary>The observation that decides between explanations that leave the same read-back; null when there is one kind only.</summary>
    /// <param name="kinds">Their kinds.</param>
    public static string? Observation(ImmutableArray<FaultKind> kinds) =>
        kinds.Distinct().Count() < 2 ? null
        : Rows.FirstOrDefault(row => kinds.All(row.Kinds.Contains)).Observation
            ?? Rows.FirstOrDefault(row => row.Kinds.Contains(kinds[0]) && kinds.Skip(1).Any(row.Kinds.Contains)).Observation
            ?? ByAnotherImage;

    /// <summary>The observation that helps where nothing explains every word, or several explanations do by chance.</summary>
    /// <param name="isSeveral">True when there are several.</param>
    public static string WhenOpen(bool isSeveral) => isSeveral ? ByAnotherImage
        : "Read again twice without touching anything and once after a new insertion; then read the board with the signature image in the chip.";
}
