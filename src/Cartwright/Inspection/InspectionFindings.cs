using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Inspection;

/// <summary>What can be said of an existing image before its platform's own checks.</summary>
public static class InspectionFindings
{
    /// <summary>No platform claims the file.</summary>
    public static readonly FindingRule Unknown = new("CW8001", FindingSeverity.Error, "Not recognised",
        "Without its platform an image cannot be read.", "Name the platform with --platform if you know it; `cartwright platforms` lists them.");

    /// <summary>Several platforms claim the file alike.</summary>
    public static readonly FindingRule Ambiguous = new("CW8002", FindingSeverity.Error, "Several platforms fit",
        "A guess could change bytes that mean something else.", "Name the platform with --platform.");

    /// <summary>The file ends before a header or a region that its platform has.</summary>
    public static readonly FindingRule CutShort = new("CW8003", FindingSeverity.Error, "Image ends too soon",
        "What is not there cannot be read, and no console starts without it.", "Look for a whole copy of the file.");

    /// <summary>The length is none the platform's boards have.</summary>
    public static readonly FindingRule OddSize = new("CW8004", FindingSeverity.Note, "Not a customary size",
        "Chips come in powers of two; what an image lacks is filled when it is built.", "Build it with the size `fit`, or lengthen it with `cartwright mend --fill-up`.");

    /// <summary>Bytes in front of the image.</summary>
    public static readonly FindingRule Prefix = new("CW8005", FindingSeverity.Note, "Bytes in front of the image",
        "They are not part of the ROM and must not go to a chip.", "Leave them out of a build with `skip`, or take them off with `cartwright mend --strip`.");

    /// <summary>The image is in another order than the console's.</summary>
    public static readonly FindingRule OtherOrder = new("CW8006", FindingSeverity.Note, "Other byte order",
        "A chip written with it as it is would hold exchanged bytes.", "Nothing, if a build is made of it: it brings the bytes into order.");

    /// <summary>Bytes behind the last part.</summary>
    public static readonly FindingRule Trailing = new("CW8007", FindingSeverity.Warning, "Bytes behind the image",
        "They belong to no region, and no chip holds them; they may be real data whose size the header understates.", "Compare them with the sizes in the header.");

    /// <summary>A checksum is not what its rule gives.</summary>
    public static readonly FindingRule WrongChecksum = new("CW8008", FindingSeverity.Warning, "Checksum not right",
        "Loaders and other tools check it; the console itself does not.", "`cartwright mend` puts it right.");

    /// <summary>A checksum that the console checks is not what its rule gives.</summary>
    public static readonly FindingRule RefusedChecksum = new("CW8009", FindingSeverity.Error, "Checksum the console refuses",
        "The console checks it and does not start the cartridge.", "`cartwright mend` puts it right.");

    /// <summary>A file stands where the result would go.</summary>
    public static readonly FindingRule InTheWay = new("CW8010", FindingSeverity.Error, "A file is in the way",
        "It may be the only copy of something.", "Move it away, or choose another name with --out.");

    /// <summary>A name given with --also is nothing of the image that could be put right.</summary>
    public static readonly FindingRule NoSuchChecksum = new("CW8011", FindingSeverity.Error, "No such checksum or field",
        "Nothing would be put right under that name.", "`cartwright examine` lists the checksums of the image.");

    /// <summary>There is no such file.</summary>
    public static readonly FindingRule NotThere = new("CW8012", FindingSeverity.Error, "No such image",
        "There is nothing to read.", "Correct the file's path.");

    /// <summary>The patch is for another form of the same image.</summary>
    public static readonly FindingRule BaseBrought = new("CW8013", FindingSeverity.Note, "Image in another form than the patch's",
        "Without its prefix, or in another byte order, it is the image the patch was made for.", "Nothing; the result has the form the patch gives it.");

    /// <summary>The patch does not say what it is for.</summary>
    public static readonly FindingRule BaseUnchecked = new("CW8014", FindingSeverity.Note, "Base not checked",
        "Some patch formats hold no checksum of their base: on another version they give a broken image.", "Compare the image with what the patch's author names.");

    /// <summary>The result is of no clear platform.</summary>
    public static readonly FindingRule NotMended = new("CW8015", FindingSeverity.Warning, "Patched, but not put right",
        "Without the platform no size code and no checksum is known.", "Name the platform with --platform.");

    /// <summary>No manifest gives the image again.</summary>
    public static readonly FindingRule NotAdopted = new("CW8016", FindingSeverity.Error, "Cannot be built again as it is",
        "A manifest that gives other bytes would be no help.", "Mend the image first, or give it a legal length.");

    /// <summary>The folder for an adopted cart is in use.</summary>
    public static readonly FindingRule FolderInUse = new("CW8017", FindingSeverity.Error, "Folder is not empty",
        "A cart folder that is there already may be somebody's work.", "Choose another folder with --out.");

    /// <summary>Chips that are not those of the board.</summary>
    public static readonly FindingRule ChipsDoNotFit = new("CW8018", FindingSeverity.Error, "Chips do not fit the board",
        "A region is whole only with every chip that holds a part of it.", "Give each site's file as SITE=FILE; `cartwright boards NAME` lists the sites.");

    /// <summary>A checksum that nothing checks is not what its rule gives.</summary>
    public static readonly FindingRule UnreadChecksum = new("CW8019", FindingSeverity.Note, "Checksum not right, and not checked",
        "Neither the console nor loaders look at it.", "`cartwright mend` puts it right.");

    /// <summary>A field that follows from the image says something else.</summary>
    public static readonly FindingRule FieldNotRight = new("CW8020", FindingSeverity.Warning, "Field does not match the image",
        "Loaders and other tools believe it.", "`cartwright mend` puts it right.");

    /// <summary>The image must grow, and a checksum covers what it grows by.</summary>
    public static readonly FindingRule FillChangesChecksum = new("CW8021", FindingSeverity.Warning, "No legal size, and the fill changes a checksum",
        "A chip is never shorter than a legal size, so the checksum on it would be wrong.", "`cartwright mend --fill-up` lengthens the image and puts the checksum right.");

    /// <summary>An image cannot be lengthened.</summary>
    public static readonly FindingRule NotFilledUp = new("CW8022", FindingSeverity.Error, "Cannot be filled up",
        "Where a container or another order says how long the image is, fill at its end would mean something else.", "Adopt the image and build it with the size `fit`.");

    /// <summary>Something else stands where the header belongs.</summary>
    public static readonly FindingRule NoHeader = new("CW8023", FindingSeverity.Error, "No header to mend",
        "What stands in its place may be code, and writing a header over it would break the program.", "Keep the header's bytes free when the program is linked, or name the right platform with --platform.");

    /// <summary>Chips give no image in any way.</summary>
    public static readonly FindingRule NoArrangement = new("CW8024", FindingSeverity.Error, "No arrangement found",
        "Chips that are in order give an image in one of the ways boards have.", "Look for a chip that is missing, larger than what it holds, or read wrongly; give the image with --image if you have it.");

    /// <summary>Chips give different images, and nothing says which is right.</summary>
    public static readonly FindingRule SeveralArrangements = new("CW8025", FindingSeverity.Error, "Several arrangements fit",
        "A guess could put halves of the game in each other's place.", "Give the image with --image if you have it, or name the platform with --platform.");

    /// <summary>All of them, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [Unknown, Ambiguous, CutShort, OddSize, Prefix, OtherOrder, Trailing, WrongChecksum, RefusedChecksum, InTheWay, NoSuchChecksum, NotThere, BaseBrought, BaseUnchecked, NotMended, NotAdopted, FolderInUse, ChipsDoNotFit,
        UnreadChecksum, FieldNotRight, FillChangesChecksum, NotFilledUp, NoHeader, NoArrangement, SeveralArrangements];
}
