using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>What can be wrong with a Nintendo 64 ROM besides the fields themselves.</summary>
public static class N64Findings
{
    /// <summary>No program puts anything where the boot code lies.</summary>
    public static readonly FindingRule NoBootCode = new("CW4270", FindingSeverity.Error, "No boot code",
        "The console checks the 4032 bytes at 0x40 against the cartridge's lock chip and runs them first; nothing starts without them.",
        "Add the boot code that suits the lock chip as a program with `\"as\": \"bootCode\"`.");

    /// <summary>A boot code no chip lets start.</summary>
    public static readonly FindingRule UnknownBootCode = new("CW4271", FindingSeverity.Error, "Boot code suits no lock chip",
        "The console locks up when its check of the boot code does not give the lock chip's value; one changed byte is enough.",
        "Use an unchanged boot code; or, for loaders that skip the check, state `bootChip` as `none`.");

    /// <summary>A boot code that only some loaders start.</summary>
    public static readonly FindingRule OnlyLoaders = new("CW4272", FindingSeverity.Warning, "Boot code for loaders only",
        "A cartridge with this boot code does not start on a console.", "For a cartridge, use a boot code that suits its lock chip, and take `bootChip` out.");

    /// <summary>A boot code for another chip than the one stated.</summary>
    public static readonly FindingRule OtherChip = new("CW4273", FindingSeverity.Error, "Boot code is for another lock chip",
        "Chip and boot code belong together: with another chip the console locks up, and the check words follow another rule.",
        "State the chip the boot code is for as `bootChip`, or leave it out; or use the boot code that suits the chip.");

    /// <summary>Check words nobody reads.</summary>
    public static readonly FindingRule WordsUnused = new("CW4274", FindingSeverity.Note, "Check words not used by this boot code",
        "An open boot code reads neither check words nor entry address, and starts images of any size.",
        "Nothing; for a loader that insists on the words state the chip as `bootChip`.");

    /// <summary>No program where the boot code takes it from.</summary>
    public static readonly FindingRule NoProgram = new("CW4275", FindingSeverity.Error, "No program at 0x1000",
        "The boot code copies the ROM from 0x1000 on into RAM and starts it.", "Place the program with `offset` 0x1000.");

    /// <summary>An entry address outside RAM.</summary>
    public static readonly FindingRule EntryOutside = new("CW4276", FindingSeverity.Warning, "Entry address outside RAM",
        "The boot code copies the program there and jumps to it; RAM is seen from $80000000 and from $A0000000 on, up to 8 MiB, and instructions lie at multiples of 4.",
        "State `entry` as the address the program is linked for; where a boot code wants it raised, the header's value is raised for you.");

    /// <summary>An entry address nobody reads.</summary>
    public static readonly FindingRule EntryIgnored = new("CW4277", FindingSeverity.Warning, "Entry address is ignored",
        "This boot code starts the program at $80000480, whatever the header says.", "Link the program for $80000480.");

    /// <summary>No ELF file for an open boot code.</summary>
    public static readonly FindingRule NoElf = new("CW4278", FindingSeverity.Warning, "No ELF file on a border of 256 bytes",
        "Open boot codes look for the program as an ELF file that begins at a multiple of 256 bytes.", "Place the program's ELF file as a raw program (`format` `raw`) at a multiple of 256 bytes.");

    /// <summary>An image that ends inside the summed range.</summary>
    public static readonly FindingRule TooShort = new("CW4279", FindingSeverity.Error, "Image ends inside the summed range",
        "The stock boot code sums 1 MiB from 0x1000 on; what an open bus gives behind the image is not defined.", "Fill the image up to 0x101000 bytes or more before the check words are computed.");

    /// <summary>Text behind the title.</summary>
    public static readonly FindingRule TitleRunsOn = new("CW4280", FindingSeverity.Note, "Bytes behind the title are in use",
        "Older templates let the title run on for seven bytes; the homebrew extension has the controllers there.", "Nothing; keep titles to 20 letters.");

    /// <summary>Values the extension does not have.</summary>
    public static readonly FindingRule ExtensionValue = new("CW4281", FindingSeverity.Warning, "Value the homebrew extension does not have",
        "Loaders go by the extension's values, and will take this for something else.", "State the field by name.");

    /// <summary>A destination on the other television standard than the chip.</summary>
    public static readonly FindingRule ChipRegion = new("CW4282", FindingSeverity.Warning, "Lock chip and destination do not go together",
        "Consoles start only cartridges with a lock chip of their own television standard, whatever the program can do.", "Fit the other chip of the pair, or correct `destination`.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        NoBootCode, UnknownBootCode, OnlyLoaders, OtherChip, WordsUnused, NoProgram, EntryOutside, EntryIgnored, NoElf, TooShort, TitleRunsOn,
        ExtensionValue, ChipRegion,
    ];
}
