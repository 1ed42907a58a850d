using Cartwright.Headers;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>
/// The module header at 0x3C0, which says what the SH-2 processors run. All of it is the program's own: a row without a value in the manifest leaves its
/// bytes as they are. The start-up block behind it belongs to no row at all.
/// </summary>
public static class ModuleHeader
{
    /// <summary>First byte of the header.</summary>
    public const int Start = 0x3C0;

    /// <summary>First byte of the start-up block; the 68000 begins here.</summary>
    public const int StartUp = 0x3F0;

    /// <summary>First byte behind the start-up block, where the 68000 goes on.</summary>
    public const int UserCode = 0x800;

    /// <summary>First entry of the table of jumps that exceptions go to.</summary>
    public const int JumpTable = 0x200;

    /// <summary>The name that most programs have.</summary>
    public const string UsualName = "MARS CHECK MODE";

    /// <summary>Bytes of the name.</summary>
    public const int NameLength = 16;

    private const string Source = "32X start-up code in two public program sources; fields from 0x3D0 on from memory";

    /// <summary>The table.</summary>
    public static HeaderTable Table { get; } = new("32X module header", MegaDriveHeader.Region, new HeaderAnchor(Start), StartUp - Start,
    [
        new("moduleName", 0x00, NameLength, new TextCodec(0x20), $"Name of the module, commonly `{UsualName}`.", Source),
        Long("moduleVersion", 0x10, "Version of the module."),
        Long("codeSource", 0x14, "Where the SH-2 processors' program lies, counted from the ROM's start."),
        Long("codeDestination", 0x18, "Where it is copied to in their RAM, counted from the RAM's start."),
        Long("codeLength", 0x1C, "Bytes that are copied."),
        Long("masterStart", 0x20, "Address where the master SH-2 starts."),
        Long("slaveStart", 0x24, "Address where the slave SH-2 starts."),
        Long("masterVectors", 0x28, "Address of the master's vectors."),
        Long("slaveVectors", 0x2C, "Address of the slave's vectors."),
    ]);

    private static HeaderField Long(string name, int offset, string meaning) =>
        new(name, offset, 4, new NumberCodec(new BytesPlacement(4, ByteOrder.BigEndian), new PlainNumber(8)), meaning, Source);
}
