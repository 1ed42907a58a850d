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
        "Chips come in powers of two; what an image lacks is filled when it is built.", "Build it with the size `fit`.");

    /// <summary>Bytes in front of the image.</summary>
    public static readonly FindingRule Prefix = new("CW8005", FindingSeverity.Note, "Bytes in front of the image",
        "They are not part of the ROM and must not go to a chip.", "Leave them out with `skip`.");

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

    /// <summary>A name given with --also is no checksum of the image.</summary>
    public static readonly FindingRule NoSuchChecksum = new("CW8011", FindingSeverity.Error, "No such checksum",
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

    /// <summary>All of them, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [Unknown, Ambiguous, CutShort, OddSize, Prefix, OtherOrder, Trailing, WrongChecksum, RefusedChecksum, InTheWay, NoSuchChecksum, NotThere, BaseBrought, BaseUnchecked, NotMended, NotAdopted, FolderInUse, ChipsDoNotFit];
}
