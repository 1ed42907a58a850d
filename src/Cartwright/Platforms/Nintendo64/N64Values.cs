using Cartwright.Headers;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The words of coded header fields (N64brew Wiki, ROM Header).</summary>
internal static class N64Values
{
    /// <summary>The unique code that turns the end of the header into the homebrew extension.</summary>
    public const string ExtensionCode = "ED";

    /// <summary>Kinds of medium.</summary>
    public static NamedValues Categories { get; } = new(
        new('N', "cartridge"), new('D', "disk"), new('C', "expandable-cartridge", "the cartridge part of a game that a disk adds to"),
        new('E', "expandable-disk", "the disk part of such a game"), new('Z', "arcade"), new(0, "none"));

    /// <summary>Where the game is sold.</summary>
    public static NamedValues Destinations { get; } = new(
        new(0, "none"), new('A', "all"), new('B', "brazil"), new('C', "china"), new('D', "germany"), new('E', "north-america"), new('F', "france"),
        new('G', "gateway-ntsc"), new('H', "netherlands"), new('I', "italy"), new('J', "japan"), new('K', "korea"), new('L', "gateway-pal"),
        new('N', "canada"), new('P', "europe"), new('S', "spain"), new('U', "australia"), new('W', "scandinavia"), new('X', "europe-x"),
        new('Y', "europe-y"), new('Z', "europe-z"), new('7', "beta"));

    /// <summary>Letters of destinations with PAL consoles (from memory).</summary>
    public static ReadOnlySpan<byte> PalLetters => "DFHILPSUWXYZ"u8;

    /// <summary>Letters of destinations with NTSC consoles (from memory).</summary>
    public static ReadOnlySpan<byte> NtscLetters => "EGJN"u8;

    /// <summary>What a controller port should hold.</summary>
    public static NamedValues Controllers { get; } = new(
        new(0x00, "pad", "none given, or a standard pad"), new(0x01, "pad-rumble"), new(0x02, "pad-memory", "with a Controller Pak"), new(0x03, "pad-transfer"),
        new(0x80, "mouse"), new(0x81, "voice-unit"), new(0x82, "gamecube-pad"), new(0x83, "keyboard"), new(0x84, "gamecube-keyboard"), new(0xFF, "empty"));

    /// <summary>Kinds of save memory.</summary>
    public static NamedValues Saves { get; } = new(
        new(0, "none"), new(1, "eeprom-512", "512 bytes"), new(2, "eeprom-2KiB"), new(3, "sram-32KiB"), new(4, "sram-96KiB", "three banks of 32 KiB"),
        new(5, "flash-128KiB"), new(6, "sram-128KiB"));
}
