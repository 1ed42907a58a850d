using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The header at 0x100-0x1FF. Every byte of it belongs to one row; the vectors before it are the program's.</summary>
public static class MegaDriveHeader
{
    /// <summary>The region all programs go into.</summary>
    public const string Region = "rom";

    /// <summary>First byte of the header.</summary>
    public const int Start = 0x100;

    internal const string BankSystem = "SEGA SSF";

    private const string Reference = "ROM header reference";
    private const string CartridgeData = "ROM Cartridge Data";

    /// <summary>The table.</summary>
    /// <param name="system">The system type when none is stated.</param>
    internal static HeaderTable Table(string system) => new("Mega Drive header", Region, new HeaderAnchor(Start), 0x100,
    [
        .. Names(system),
        .. Ranges,
        .. Rest,
    ])
    {
        Checksums =
        [
            new ChecksumRow("checksum", 0x8E, 2, ByteOrder.BigEndian, MegaDriveChecksum.Compute,
                "sum of the big-endian 16-bit words from 0x200 to romEnd inclusive, cut at the end of the ROM, modulo 0x10000", Reference)
            {
                Others =
                [
                    new OtherChecksum(static rom => MegaDriveChecksum.AllWordsXor(rom), "the exclusive or of all words of the file"),
                    new OtherChecksum(static rom => MegaDriveChecksum.SumTo(rom, rom.Length - 1), "the sum to the end of the ROM instead of to `romEnd`"),
                ],
            },
        ],
    };

    private static ImmutableArray<HeaderField> Names(string system) =>
    [
        Text("systemType", 0x00, 16, "The system; consoles with a lock refuse a cartridge that does not begin with SEGA here. Usual texts: "
            + string.Join(", ", SystemTypes.Known.Select(static type => $"`{type}`")) + ".", Reference) with { Default = system },
        Text("copyright", 0x10, 16, "Publisher and month in the form `(C)XXXX YYYY.MMM`.", "Genesis format table"),
        Text("domesticTitle", 0x20, 48, "The title in Japan; Shift-JIS bytes only as `hex` and all 48 bytes.", Reference) with { FromCart = CartKey.Title },
        Text("overseasTitle", 0x50, 48, "The title elsewhere.", Reference) with { FromCart = CartKey.Title },
        new("serial", 0x80, SerialCodec.Length, new SerialCodec(), "Type (GM for a game, AI for education), a blank, and the product code.", CartridgeData)
        {
            Default = "GM 00000000",
            Repair = ZerosToSpaces,
        },
        new("revision", 0x8B, 3, new RevisionCodec(), "The end of the serial number: a hyphen and two digits.", CartridgeData)
        {
            Default = "0",
            FromCart = CartKey.Revision,
            Repair = ZerosToSpaces,
        },
        new("devices", 0x90, 16, new DeviceListCodec(), "The devices the game reads, one letter each.", CartridgeData) { Default = "3-button-pad" },
    ];

    private static ImmutableArray<HeaderField> Ranges =>
    [
        Address("romStart", 0xA0, "First address of the ROM: always 0.") with { WorkOut = static _ => "0x00000000", Mended = true },
        Address("romEnd", 0xA4, "Last address of the ROM, its size less one; the checksum ends here.") with { WorkOut = LastAddress, Mended = true },
        Address("ramStart", 0xA8, "First address of the console's work RAM.") with { Default = "0x00FF0000" },
        Address("ramEnd", 0xAC, "Last address of the console's work RAM.") with { Default = "0x00FFFFFF" },
    ];

    private static ImmutableArray<HeaderField> Rest =>
    [
        new("saveMemory", 0xB0, SaveMemory.BlockLength, new SaveMemoryCodec(), "The save memory on the cartridge.", CartridgeData) { Default = "none", Repair = SaveMemoryCodec.Repair },
        Text("modem", 0xBC, 12, "`MO`, company, number and version for games that use a modem.", CartridgeData) with { Repair = ZerosToSpaces },
        Text("memo", 0xC8, 40, "Reserved; free text does no harm.", Reference),
        new("region", 0xF0, 3, new RegionLettersCodec(), "The consoles the game is for.", Reference) { Default = "japan americas europe" },
        Text("reserved", 0xF3, 13, "Reserved; spaces.", Reference),
    ];

    private static HeaderField Text(string name, int offset, int length, string meaning, string source) =>
        new(name, offset, length, new TextCodec(0x20), meaning, source) { Default = "" };

    // Fields of letters are filled with spaces; programs leave zeros there.
    private static FieldRepair ZerosToSpaces { get; } = new("zeros where spaces belong", static (held, _) => held.Contains((byte)0) ? "hex " + Convert.ToHexString(Spaced(held)) : null, OnlyNamed: true);

    private static byte[] Spaced(ReadOnlySpan<byte> held)
    {
        var spaced = held.ToArray();
        spaced.AsSpan().Replace((byte)0, (byte)' ');
        return spaced;
    }

    private static HeaderField Address(string name, int offset, string meaning) =>
        new(name, offset, 4, new NumberCodec(new BytesPlacement(4, ByteOrder.BigEndian), new PlainNumber(8)), meaning, Reference);

    private static string LastAddress(HeaderContext context) =>
        string.Create(CultureInfo.InvariantCulture, $"0x{context.LengthOf(Region) - 1:X8}");
}
