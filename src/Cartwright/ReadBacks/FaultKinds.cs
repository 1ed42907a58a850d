using System.Collections.Immutable;
using static Cartwright.ReadBacks.FaultStage;

namespace Cartwright.ReadBacks;

/// <summary>The table of fault kinds. Of kinds that leave the same read-back the first in <see cref="All"/> is named, the others are candidates.</summary>
public static class FaultKinds
{
    private const string SeeJoint = "Look at the joint of this line at the chip and at the edge contact.";
    private const string SeeFile = "Compare the digest of the file that was burnt with the one in the build's record.";
    private const string SeeNeighbours = "Look for solder or a whisker between these lines, first where their pins are neighbours.";
    private const string SeeWiring = "Follow both lines from the chip pin to the edge contact.";
    private const string SeeWriter = "Write the chip again on the programmer and verify it there before it goes back.";
    private const string SeeDecoder = "Look at the enable of this chip: decoder, inverter, and the joints of /CE and /OE.";

    /// <summary>The two bytes of each pair changed places.</summary>
    public static FaultKind BytesSwapped { get; } = new("bytes-swapped", FaultStage.File, "the two bytes of each pair changed places", SeeFile);

    /// <summary>The two 16-bit words of each pair changed places.</summary>
    public static FaultKind WordsSwapped { get; } = new("words-swapped", FaultStage.File, "the 16-bit words of each pair changed places", SeeFile);

    /// <summary>Byte lanes in another order.</summary>
    public static FaultKind LanesExchanged { get; } = new("lanes-exchanged", FaultStage.File, "byte lanes changed places", "Check which file went into which chip, and the order of the lanes.");

    /// <summary>The file was not split into lanes.</summary>
    public static FaultKind InterleaveNotDone { get; } = new("interleave-not-done", FaultStage.File, "the lanes stand one behind the other instead of interleaved", SeeFile);

    /// <summary>The file was interleaved twice.</summary>
    public static FaultKind InterleaveDoneTwice { get; } = new("interleave-done-twice", FaultStage.File, "the bytes were interleaved once too often", SeeFile);

    /// <summary>An address line was dead while the chip was written.</summary>
    public static FaultKind AddressDeadWhileWriting { get; } = new("address-dead-while-writing", Landed, "the address line did not switch while the chip was written", "Look at this line in the programmer's socket and its adapter, then write the chip again.");

    /// <summary>The file is a text-damaged copy.</summary>
    public static FaultKind FileDamagedAsText { get; } = new("file-damaged-as-text", FaultStage.File, "the file was treated as text on its way", "Send the file again as binary.");

    /// <summary>A data line reads low.</summary>
    public static FaultKind DataStuckLow { get; } = new("data-stuck-low", Data, "the data line reads low all the time", SeeJoint);

    /// <summary>A data line reads high.</summary>
    public static FaultKind DataStuckHigh { get; } = new("data-stuck-high", Data, "the data line reads high all the time", SeeJoint);

    /// <summary>Data lines joined.</summary>
    public static FaultKind DataShorted { get; } = new("data-shorted", Data, "the data lines are joined", SeeNeighbours);

    /// <summary>Two data lines changed places.</summary>
    public static FaultKind DataSwapped { get; } = new("data-swapped", Data, "the two data lines changed places", SeeWiring);

    /// <summary>The data bus runs backwards.</summary>
    public static FaultKind DataReversed { get; } = new("data-reversed", Data, "the data lines run in reverse", "Check the board's data lines against the file: one of the two is reversed.");

    /// <summary>Data lines in another order.</summary>
    public static FaultKind DataPermuted { get; } = new("data-permuted", Data, "the data lines are in another order", "Follow each data line from the chip pin to the edge contact.");

    /// <summary>Data lines inverted.</summary>
    public static FaultKind DataInverted { get; } = new("data-inverted", Data, "the data line reads inverted", "Look for an inverting buffer on this line.");

    /// <summary>A data line bridged to an address line.</summary>
    public static FaultKind DataAddressBridged { get; } = new("data-address-bridged", Data, "the data line touches an address line", SeeNeighbours);

    /// <summary>A data line hangs in the air.</summary>
    public static FaultKind DataOpen { get; } = new("data-open", Data, "the data line is not connected", SeeJoint);

    /// <summary>An address line inverted.</summary>
    public static FaultKind AddressInverted { get; } = new("address-inverted", Address, "the address line arrives inverted", "Look for an inverter on this line, or a line that should have one.");

    /// <summary>An address line stays low.</summary>
    public static FaultKind AddressStuckLow { get; } = new("address-stuck-low", Address, "the address line is low at the chip all the time", SeeJoint);

    /// <summary>An address line stays high.</summary>
    public static FaultKind AddressStuckHigh { get; } = new("address-stuck-high", Address, "the address line is high at the chip all the time", SeeJoint);

    /// <summary>Address lines joined.</summary>
    public static FaultKind AddressShorted { get; } = new("address-shorted", Address, "the address lines are joined", SeeNeighbours);

    /// <summary>Two address lines changed places.</summary>
    public static FaultKind AddressSwapped { get; } = new("address-swapped", Address, "the two address lines changed places", SeeWiring);

    /// <summary>Address lines in another order.</summary>
    public static FaultKind AddressPermuted { get; } = new("address-permuted", Address, "the address lines are in another order", "Follow each address line from the chip pin to the edge contact.");

    /// <summary>An address line hangs in the air.</summary>
    public static FaultKind AddressOpen { get; } = new("address-open", Address, "the address line is not connected at the chip", SeeJoint);

    /// <summary>The halves of the file changed places.</summary>
    public static FaultKind HalvesExchanged { get; } = new("halves-exchanged", FaultStage.File, "the two halves changed places", SeeFile);

    /// <summary>Reads come a cycle too early.</summary>
    public static FaultKind ReadTooEarly { get; } = new("read-too-early", Time, "the word was taken before the chip had it ready", "Read more slowly, or use a faster chip; check the supply at the chip's pins.");

    /// <summary>The file is rotated.</summary>
    public static FaultKind Rotated { get; } = new("rotated", FaultStage.File, "the contents begin in the middle and run on from the start", SeeFile);

    /// <summary>A prefix stands before the contents.</summary>
    public static FaultKind PrefixLeftIn { get; } = new("prefix-left-in", FaultStage.File, "bytes stand in front of the contents, and the end is lost", "Take the file header off the file and write the chip again.");

    /// <summary>The file repeats.</summary>
    public static FaultKind Repeated { get; } = new("repeated", FaultStage.File, "the first part stands again and again", SeeFile);

    /// <summary>The bank latch does not switch.</summary>
    public static FaultKind LatchDead { get; } = new("latch-dead", Board, "every bank shows the same one", "Look at the latch: its clock, its write strobe, its outputs.");

    /// <summary>Bank numbers are mixed with the ROM's own bytes.</summary>
    public static FaultKind BusConflict { get; } = new("bus-conflict", Board, "the bank number meets the byte that the ROM drives", "Write a bank number where the ROM holds the same number.");

    /// <summary>The chip is smaller than it should be.</summary>
    public static FaultKind ChipTooSmall { get; } = new("chip-too-small", Landed, "the chip holds less than was written", "Read the chip's identity code and its marking.");

    /// <summary>Banks in another order.</summary>
    public static FaultKind BanksReordered { get; } = new("banks-reordered", FaultStage.File, "the banks are in another order", SeeFile);

    /// <summary>The upper half was read.</summary>
    public static FaultKind WrongHalf { get; } = new("wrong-half", Board, "the upper half of the chip was read", "Look at the level of the chip's top address pin: tied high, it shows the upper half.");

    /// <summary>Nothing is in the cells.</summary>
    public static FaultKind Blank { get; } = new("blank", Cells, "every cell holds the same", SeeWriter);

    /// <summary>Nobody drives the bus.</summary>
    public static FaultKind BusNotDriven { get; } = new("bus-not-driven", Bus, "nothing drives the bus", SeeDecoder);

    /// <summary>A range selects no chip.</summary>
    public static FaultKind NotSelectedRange { get; } = new("not-selected-range", Bus, "no chip answers in this range", SeeDecoder);

    /// <summary>Blocks were not written.</summary>
    public static FaultKind BlocksMissing { get; } = new("blocks-missing", Sent, "stretches were never written", SeeWriter);

    /// <summary>Writing ended early.</summary>
    public static FaultKind StoppedEarly { get; } = new("stopped-early", Sent, "writing ended early", SeeWriter);

    /// <summary>The chip was not erased before.</summary>
    public static FaultKind NotErased { get; } = new("not-erased", Cells, "the old contents were not erased first", "Erase, check that the chip is blank, and write it again.");

    /// <summary>Some sectors kept what they had.</summary>
    public static FaultKind SectorsUnchanged { get; } = new("sectors-unchanged", Cells, "these sectors kept their old contents", "Take the protection off these sectors, erase and write them again.");

    /// <summary>Two chips drive the bus.</summary>
    public static FaultKind TwoChipsEnabled { get; } = new("two-chips-enabled", Bus, "two chips drive the bus at once", SeeDecoder);

    /// <summary>Chips in each other's places.</summary>
    public static FaultKind ChipsExchanged { get; } = new("chips-exchanged", FaultStage.File, "the chip holds the image of another site", "Check the labels: this chip belongs to the other site.");

    /// <summary>Another release.</summary>
    public static FaultKind OtherImage { get; } = new("other-image", FaultStage.File, "the chip holds another release", "Write the chip again with the file of this build.");

    /// <summary>The chip answers with its state.</summary>
    public static FaultKind LeftInStatusMode { get; } = new("left-in-status-mode", Chip, "the chip answers with its identity or state instead of its contents", "Send the chip's reset command, or switch its supply off and on, and read again.");

    /// <summary>Cells are damaged.</summary>
    public static FaultKind CellsDamaged { get; } = new("cells-damaged", Cells, "cells stay at one whatever is written", "Do not use this chip again.");

    /// <summary>Cells are weakly written.</summary>
    public static FaultKind UnderProgrammed { get; } = new("under-programmed", Weak, "cells are weakly written", "Erase the chip and write it again; check the programming voltage and supply against the data sheet.");

    /// <summary>Lines switching together disturb the read.</summary>
    public static FaultKind Bounce { get; } = new("bounce", Time, "bits go wrong when many lines switch together", "Fit a capacitor from supply to ground right at the chip; shorten the wires.");

    /// <summary>Bits flip at random.</summary>
    public static FaultKind RandomNoise { get; } = new("random-noise", Time, "bits flip at random", "Check the supply and the length of the wires, and read again.");

    /// <summary>A contact that holds in some insertions only.</summary>
    public static FaultKind Contact { get; } = new("contact", FaultStage.Contact, "the fault comes and goes with the insertion", "Clean the edge contacts and the connector, and seat the cartridge again.");

    /// <summary>Every kind, in the order in which look-alikes are named.</summary>
    public static ImmutableArray<FaultKind> All { get; } =
    [
        BytesSwapped, WordsSwapped, LanesExchanged, InterleaveNotDone, InterleaveDoneTwice, AddressDeadWhileWriting, FileDamagedAsText,
        AddressInverted, AddressStuckLow, AddressStuckHigh, AddressSwapped, AddressShorted, AddressPermuted, AddressOpen,
        DataStuckLow, DataStuckHigh, DataInverted, DataShorted, DataReversed, DataSwapped, DataAddressBridged, DataPermuted, DataOpen,
        HalvesExchanged, ReadTooEarly, Rotated, PrefixLeftIn, Repeated, LatchDead, BusConflict, ChipTooSmall, BanksReordered, WrongHalf,
        Blank, BusNotDriven, NotSelectedRange, BlocksMissing, StoppedEarly, NotErased, SectorsUnchanged, TwoChipsEnabled,
        ChipsExchanged, OtherImage, LeftInStatusMode, CellsDamaged, UnderProgrammed, Bounce, RandomNoise, Contact,
    ];

    /// <summary>The kind of a name; null when there is none.</summary>
    /// <param name="name">The name, as <see cref="FaultKind.Name"/> has it.</param>
    public static FaultKind? Find(string name) => All.FirstOrDefault(kind => string.Equals(kind.Name, name, StringComparison.Ordinal));

    internal static int Rank(FaultKind kind) => All.IndexOf(kind);
}
