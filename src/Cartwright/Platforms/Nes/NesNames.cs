using Cartwright.Headers;

namespace Cartwright.Platforms.Nes;

/// <summary>The words of the container's lists. Source: NESdev Wiki, NES 2.0.</summary>
internal static class NesNames
{
    /// <summary>Bits 3 and 0 of byte 6 on most boards. A mirroring repeats the picture in its own direction; the wiki's "arrangement" names the other one.</summary>
    public static NamedValues Mirroring { get; } = new(
        new(0, "horizontal-mirroring", "nametables one below the other (vertical arrangement), PPU A11 to CIRAM A10"),
        new(1, "vertical-mirroring", "nametables side by side (horizontal arrangement), PPU A10 to CIRAM A10"),
        new(2, "four-screen", "the board's own alternative, mostly four nametables in RAM on the cartridge"),
        new(3, "four-screen-vertical", "the alternative, and the vertical-mirroring bit set"),
        new(0, "mapper-controlled", "the mapper switches it, and the bits stay 0"));

    /// <summary>The same bits of mapper 30. Source: NESdev Wiki, iNES mapper 030.</summary>
    public static NamedValues Mirroring30 { get; } = new(
        new(0, "horizontal-mirroring", "nametables one below the other"),
        new(1, "vertical-mirroring", "nametables side by side"),
        new(2, "one-screen", "one screen that the mapper switches"),
        new(3, "four-screen", "four nametables in RAM on the cartridge"),
        new(2, "mapper-controlled", "as one-screen"));

    /// <summary>The same bits of mapper 218, where they say which PPU line the console's video memory hangs on. Source: NESdev Wiki, iNES mapper 218; A12 and A13 from memory.</summary>
    public static NamedValues Mirroring218 { get; } = new(
        new(0, "horizontal-mirroring", "PPU A11 to CIRAM A10"),
        new(1, "vertical-mirroring", "PPU A10 to CIRAM A10"),
        new(2, "one-screen-a12", "PPU A12 to CIRAM A10"),
        new(3, "one-screen-a13", "PPU A13 to CIRAM A10"));

    /// <summary>Bits 3 and 2 of byte 7.</summary>
    public static NamedValues FormatMark { get; } = new(new(0, "ines"), new(1, "archaic"), new(2, "nes2"));

    /// <summary>Bits 1 and 0 of byte 7.</summary>
    public static NamedValues Console { get; } = new(
        new(0, "nes", "NES or Famicom"), new(1, "vs-system"), new(2, "playchoice-10"), new(3, "extended", "see extendedConsole"));

    /// <summary>The same bits of the older container.</summary>
    public static NamedValues OlderConsole { get; } = new(Console.Names[..3]);

    /// <summary>Byte 12.</summary>
    public static NamedValues Timing { get; } = new(
        new(0, "ntsc", "RP2C02"), new(1, "pal", "RP2C07"), new(2, "multi-region"), new(3, "dendy", "UA6538"));

    /// <summary>Byte 9, bit 0, of the older container.</summary>
    public static NamedValues OlderTiming { get; } = new(Timing.Names[..2]);

    /// <summary>The low half of byte 13 when the console is a Vs. System.</summary>
    public static NamedValues VsPpu { get; } = new(
        new(0x0, "rp2c03", "any RP2C03 or RC2C03"),
        new(0x2, "rp2c04-0001"), new(0x3, "rp2c04-0002"), new(0x4, "rp2c04-0003"), new(0x5, "rp2c04-0004"),
        new(0x8, "rc2c05-01"), new(0x9, "rc2c05-02"), new(0xA, "rc2c05-03"), new(0xB, "rc2c05-04"));

    /// <summary>The high half of byte 13 when the console is a Vs. System.</summary>
    public static NamedValues VsHardware { get; } = new(
        new(0, "unisystem"), new(1, "unisystem-protection-1"), new(2, "unisystem-protection-2"), new(3, "unisystem-protection-3"),
        new(4, "unisystem-protection-4"), new(5, "dual-system"), new(6, "dual-system-protection"));

    /// <summary>The low half of byte 13 when the console is an extended one.</summary>
    public static NamedValues ExtendedConsole { get; } = new(
        new(0x3, "famiclone-decimal", "a famiclone with decimal mode"),
        new(0x4, "nes-epsm", "an NES with the EPSM sound module"),
        new(0x5, "vt01-stn"), new(0x6, "vt02"), new(0x7, "vt03"), new(0x8, "vt09"), new(0x9, "vt32"), new(0xA, "vt369"), new(0xB, "um6578"),
        new(0xC, "famicom-network-system"));

    /// <summary>Byte 15.</summary>
    public static NamedValues ExpansionDevice { get; } = new(
    [
        .. new[]
        {
            "unspecified", "standard-controllers", "four-score", "famicom-four-players", "vs-4016", "vs-4017", "reserved-06", "vs-zapper",
            "zapper", "two-zappers", "hyper-shot-light-gun", "power-pad-a", "power-pad-b", "family-trainer-a", "family-trainer-b", "vaus-nes",
            "vaus-famicom", "two-vaus-recorder", "hyper-shot-controller", "pachinko", "punching-bag", "mahjong-pad", "party-tap", "drawing-tablet",
            "barcode-reader", "piano-keyboard", "mat-and-mallet", "inflatable-bicycle", "double-fisted", "glasses-3d", "music-keyboard", "robot-gyro",
            "data-recorder", "turbo-file", "battle-box", "basic-keyboard-recorder", "pec-keyboard", "bit-79-keyboard", "subor-keyboard", "subor-keyboard-mouse-3x8",
            "subor-keyboard-mouse-24", "snes-mouse", "multicart", "two-snes-pads", "ergometer-bicycle", "u-force", "robot-stack-up", "patrol-light-gun",
            "c1-cassette", "swapped-controller", "sudoku-pad", "pinball", "casino-buttons", "keda-keyboard", "subor-keyboard-mouse-4017", "port-test",
            "multi-game-buttons", "dance-mat", "tv-remote", "network-controller", "fishing-rod", "karaoke", "keyboard-3e", "keyboard-3f",
            "keyboard-ps2-mouse",
        }.Select(static (name, value) => new NamedValue((ulong)value, name)),
    ]);

    /// <summary>Sizes of RAM: 64 bytes shifted left by the code. Codes from 1 on.</summary>
    public static SizeCode RamSize { get; } = new([.. Enumerable.Range(0, 16).Select(static code => ((ulong)code, code == 0 ? 0L : 64L << code))]);
}
