namespace Cartwright.Chips;

/// <summary>What the codes of the Common Flash Interface stand for.</summary>
/// <remarks>Source: JEDEC JESD68.01; ids of command sets: U-Boot, include/mtd/cfi_flash.h.</remarks>
internal static class CfiWords
{
    private static readonly (int Id, string Name)[] CommandSets =
    [
        (0x0000, "none"),
        (0x0001, "Intel/Sharp extended"),
        (0x0002, "AMD/Fujitsu standard"),
        (0x0003, "Intel standard"),
        (0x0004, "AMD/Fujitsu extended"),
        (0x0100, "Mitsubishi standard"),
        (0x0101, "Mitsubishi extended"),
        (0x0102, "SST"),
        (0x0200, "Intel programming regions"),
    ];

    private static readonly (int Code, string Name)[] Interfaces =
    [
        (0, "8-bit"),
        (1, "16-bit"),
        (2, "8-bit or 16-bit"),
        (3, "32-bit"),
        (5, "16-bit or 32-bit"),
    ];

    /// <summary>The name of a command set; null when it is not known.</summary>
    public static string? CommandSet(int id) => Array.Find(CommandSets, row => row.Id == id).Name;

    /// <summary>The data lines of an interface code; null when it is not known.</summary>
    public static string? Interface(int code) => Array.Find(Interfaces, row => row.Code == code).Name;
}
