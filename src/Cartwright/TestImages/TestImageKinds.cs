using System.Collections.Immutable;

namespace Cartwright.TestImages;

/// <summary>The table of test images.</summary>
public static class TestImageKinds
{
    /// <summary>Solves an unknown wiring from one read.</summary>
    public static TestImageKind Signature { get; } = new(
        "signature",
        "in half of the words the level of one address line, in a code of its own; in the others chance bits of another density for each data line",
        "every fault of an address or data line, lines in any order, chips exchanged, the true size of the chip",
        "levels and speed, and a wrong wiring that the chip was also written through")
    {
        OfChip = static chip => SignatureImage.Make(chip.Size, chip.Shape, chip.Seed),
        HasSeed = true,
    };

    /// <summary>Text for the eye.</summary>
    public static TestImageKind Ruler { get; } = new(
        "ruler",
        "lines of 16 characters: the chip, the line's own address in 64 KiB pages, and a check of four digits",
        "at a glance, in any hexadecimal view: an offset, bytes in front, wrong halves and pages, exchanged chips",
        "faults of single bits, and which of several lines is at fault")
    {
        OfChip = static chip => RulerImage.Make(chip.Site, chip.Size),
    };

    /// <summary>Every bank says its number.</summary>
    public static TestImageKind Banks { get; } = new(
        "banks",
        "every bank holds its number as text at its start, in its middle and at its end, and is filled with the number's low byte",
        "the order of the banks, which bank is seen after power-up, which is fixed, and what each request for a bank really shows",
        "lines inside a bank; it has no vectors, so read it with a reader and do not start it in a console")
    {
        OfRegion = static region => BankImage.Make(region.Size, region.BankSize),
        HasBanks = true,
    };

    /// <summary>Four words that show every order.</summary>
    public static TestImageKind Order { get; } = new(
        "order",
        "the words 0x0123, 0x4567, 0x89AB and 0xCDEF as the bus carries them, over and over",
        "the order of bytes, words and lanes, and whether lanes were interleaved",
        "address lines above the first two or three, banks, and everything else")
    {
        OfRegion = static region => OrderImage.Make(region.Size, region.BusWidth, region.ByteOrder),
    };

    /// <summary>Tags at both ends of every block.</summary>
    public static TestImageKind Size { get; } = new(
        "size",
        "a text with its own address in the first and the last 16 bytes of every block of 1 KiB, and so of every larger power of two; erased between",
        "the true size of the chip, what is repeated and with which period, dead upper lines, and halves that were written over each other",
        "the lower ten address lines, and single data lines")
    {
        OfChip = static chip => SizeImage.Make(chip.Size),
    };

    /// <summary>All data lines switch, or none.</summary>
    public static TestImageKind Stress { get; } = new(
        "stress",
        "in turn 256 words that alternate between all zeros and all ones, in either phase, and 256 quiet words that are all alike",
        "errors that come with many lines switching at once: compare their rate in restless and quiet stretches",
        "static wiring: most address faults leave it as it is")
    {
        OfChip = static chip => StressImage.Make(chip.Size, chip.Shape),
    };

    /// <summary>All zeros.</summary>
    public static TestImageKind Solid { get; } = new(
        "solid",
        "0x00 everywhere: every cell written",
        "cells that cannot be written or lose their charge; erased again and read as 0xFF everywhere, cells that cannot be erased",
        "the wiring, all but data lines stuck high")
    {
        OfChip = static chip => new byte[chip.Size],
    };

    /// <summary>Places to select banks at.</summary>
    public static TestImageKind Conflict { get; } = new(
        "conflict",
        "in every bank its number as text, then a quarter filled with the number's low byte, a quarter 0x00 and a half 0xFF",
        "whether the ROM answers while a bank is selected: write each number to a place that holds 0xFF, then to one that holds 0x00, and compare the banks that are seen",
        "lines inside a bank; which of two drivers is stronger for good")
    {
        OfRegion = static region => ConflictImage.Make(region.Size, region.BankSize),
        HasBanks = true,
    };

    /// <summary>For memory that keeps its contents on a battery, or ought to.</summary>
    public static TestImageKind Memory { get; } = new(
        "memory",
        "for RAM and save memory: chance bytes, and at the end of every 256 bytes their CRC-32, so that a read tells by itself what was kept",
        "stuck, open and shorted lines, when read at once after writing; what was not kept, when read again after the power was off",
        "lines that are exchanged, as the same lines write and read; coupling between cells, which takes a march test")
    {
        OfChip = static chip => MemoryImage.Make(chip.Size, chip.Seed),
        HasSeed = true,
    };

    /// <summary>The same with every bit the other way.</summary>
    public static TestImageKind MemoryInverse { get; } = new(
        "memory-inverse",
        "the image `memory` with every bit inverted, so that the two together hold every cell at both levels",
        "what `memory` tells, for the other level of each cell",
        "what `memory` cannot tell")
    {
        OfChip = static chip => MemoryImage.Inverse(chip.Size, chip.Seed),
        HasSeed = true,
    };

    /// <summary>A release that stays diagnosable. It is made of an existing image, not from nothing.</summary>
    public static TestImageKind Fill { get; } = new(
        "fill",
        "an existing image whose long unused stretches hold chance bytes behind a text with their address; checksums are put right again",
        "faults of the upper address lines that plain fill would hide, with the release itself in the chip",
        "lines that the release's own contents hide; and what is filled cannot be written later without erasing");

    /// <summary>All rows, in the order in which they are used at the bench.</summary>
    public static ImmutableArray<TestImageKind> All { get; } = [Signature, Ruler, Banks, Order, Size, Stress, Solid, Conflict, Fill, Memory, MemoryInverse];

    /// <summary>A kind by name, letter case ignored; null when there is none.</summary>
    /// <param name="name">The name.</param>
    public static TestImageKind? Find(string name) => All.FirstOrDefault(kind => string.Equals(kind.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
}
