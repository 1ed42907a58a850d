using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Proofs;

/// <summary>What can be wrong with what a proof is to work on.</summary>
public static class ProofFindings
{
    /// <summary>A read-back without bytes.</summary>
    public static FindingRule Empty { get; } = new(
        "CW9000", Error, "Nothing was read",
        "A file without bytes shows no chip; the reader has most likely ended with an error.",
        "Read again, and look at what the reader says.");

    /// <summary>An odd number of bytes of 16-bit words.</summary>
    public static FindingRule HalfWord { get; } = new(
        "CW9001", Error, "Half a word",
        "A chip of 16 data lines gives two bytes at each address.",
        "Read the whole chip again, or give the width that it has with --width.");

    /// <summary>No such site.</summary>
    public static FindingRule NoSuchSite { get; } = new(
        "CW9002", Error, "No such chip",
        "Only a chip that the build has an image for can be proved.",
        "Name one of the sites of the build.");

    /// <summary>Several chips and no word on which was read.</summary>
    public static FindingRule WhichChip { get; } = new(
        "CW9003", Error, "Which chip was read?",
        "The build has several chips, and the length of the read-back does not say which of them was read, or that the whole cartridge was.",
        "Name the chip with --site, or read the whole cartridge and add --cartridge.");

    /// <summary>A text in place of bytes.</summary>
    public static FindingRule IsText { get; } = new(
        "CW9004", Error, "A text, not the bytes of a chip",
        "Compared byte by byte with an image, a text of hexadecimal records differs everywhere.",
        "Save the read-back as plain bytes, or convert it: objcopy -I ihex -O binary, or -I srec for S-records.");

    /// <summary>A read of the cartridge of another length.</summary>
    public static FindingRule OtherLength { get; } = new(
        "CW9005", Error, "Length of another cartridge",
        "Which byte of a read belongs to which chip follows from the whole length of the region.",
        "Read the cartridge again with the size of the region set on the reader, without any file header.");

    /// <summary>Too many reads.</summary>
    public static FindingRule TooMany { get; } = new(
        "CW9006", Error, "Too many read-backs",
        "All reads are held in memory together, and more of them tell no more.",
        "Give at most 128 reads of a chip.");

    /// <summary>Numbers that do not go with the reads.</summary>
    public static FindingRule NumbersDiffer { get; } = new(
        "CW9007", Error, "Not one number for each read-back",
        "Whether reads agree within one insertion, and differ between two, is what tells a contact from a chip.",
        "Give one number for each read-back, in their order and separated by commas, as in --insertions 1,1,2.");

    /// <summary>The expected file given as its own read-back.</summary>
    public static FindingRule ReadIsExpected { get; } = new(
        "CW9008", Error, "The same file twice",
        "A file is always equal to itself; that says nothing of a chip.",
        "Give the file that the reader has written.");

    /// <summary>A record that cannot be used.</summary>
    public static FindingRule BadRecord { get; } = new(
        "CW9009", Error, "Not a record of a build",
        "Chips, their widths and the order of their lines are taken from the record.",
        "Give a .record.json as `cartwright build` and `cartwright pattern` write it, the manifest, or a chip file.");

    /// <summary>A chip file that is not what its record says.</summary>
    public static FindingRule NotAsRecorded { get; } = new(
        "CW9010", Error, "Chip file is not that of the record",
        "A read-back that is held against another file than was built proves nothing.",
        "Build again, or fetch the chip file that belongs to the record.");

    /// <summary>No raw chip image.</summary>
    public static FindingRule NoRawImage { get; } = new(
        "CW9011", Error, "No raw image of a chip",
        "Read-backs are compared with the bytes of the chip.",
        "Add `raw` to images.formats in the manifest and build again.");

    /// <summary>No board.</summary>
    public static FindingRule NoBoard { get; } = new(
        "CW9012", Error, "No board, so no chips",
        "What a chip must hold follows from the board that it is on.",
        "Name a board in the manifest, add --board, or give the file of one chip.");

    /// <summary>Bytes that may differ beyond the image.</summary>
    public static FindingRule BadRange { get; } = new(
        "CW9013", Error, "Not bytes of the image",
        "Bytes that may differ are left out of the comparison, so they must be in it.",
        "Give OFFSET+LENGTH, counted in bytes of the read-back, as in --may-differ 0x7FF0+16.");

    /// <summary>Another image of the wrong length.</summary>
    public static FindingRule OtherImageLength { get; } = new(
        "CW9014", Error, "Image of another length",
        "Old contents, and a second chip on the bus, are combined with the image byte by byte.",
        "Give a file as long as the chip: a read of the whole chip.");

    /// <summary>Nothing to prove.</summary>
    public static FindingRule NoReads { get; } = new(
        "CW9015", Error, "No read-back",
        "Whether a chip holds what it should, only a read of it can tell.",
        "Give the files that the reader has written, or add --diagnosable to learn what a read could show.");

    /// <summary>The package is not known.</summary>
    public static FindingRule UnknownPackage { get; } = new(
        "CW9016", Warning, "No pin-out of that package",
        "Pins can only be named where the catalogue has a pin-out of the part in its package.",
        "`cartwright parts PART` shows the pin-outs of a part; else look into the data sheet.");

    /// <summary>The part is not as large as the image.</summary>
    public static FindingRule OtherPart { get; } = new(
        "CW9017", Warning, "Part of another size",
        "A part of another size has other lines on other pins.",
        "Give the part that is fitted with --part, or the image of the whole chip.");

    /// <summary>Bytes were left out.</summary>
    public static FindingRule Masked { get; } = new(
        "CW9018", Note, "Some bytes were not compared",
        "Serial numbers and what depends on them differ from unit to unit, so the image does not say what they should be.",
        "To prove them too, give the unit's own chip file, as `cartwright run` makes it.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        Empty, HalfWord, NoSuchSite, WhichChip, IsText, OtherLength, TooMany, NumbersDiffer, ReadIsExpected, BadRecord, NotAsRecorded, NoRawImage, NoBoard, BadRange,
        OtherImageLength, NoReads, UnknownPackage, OtherPart, Masked,
    ];
}
