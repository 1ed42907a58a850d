using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.Snes;

// The words of the header's coded fields (fullsnes, cartridge chapters).
internal static class SnesValues
{
    public const string Extended = "extended";

    private static readonly NamedValue Exlorom = new(0x2, "exlorom", "LoROM with more than 4 MiB, by informal use");

    private static readonly ImmutableArray<NamedValue> Modes =
    [
        new(0x0, "lorom", "32 KiB a bank"),
        new(0x1, "hirom", "64 KiB a bank"),
        new(0x2, "sdd1", "LoROM with S-DD1"),
        new(0x3, "sa1", "LoROM with SA-1"),
        new(0x5, "exhirom", "HiROM with more than 4 MiB"),
        new(0xA, "spc7110", "HiROM with SPC7110"),
    ];

    public static NamedValues Chipset { get; } = new(
        new NamedValue(0x00, "rom", "ROM alone"),
        new NamedValue(0x01, "rom-ram", "save RAM without battery"),
        new NamedValue(0x02, "rom-ram-battery", "save RAM with battery"),
        new NamedValue(0x03, "rom-dsp", "DSP"),
        new NamedValue(0x05, "rom-dsp-ram-battery", "DSP, RAM with battery"),
        new NamedValue(0x13, "rom-gsu", "GSU"),
        new NamedValue(0x14, "rom-gsu-ram", "GSU, RAM"),
        new NamedValue(0x15, "rom-gsu-ram-battery", "GSU, RAM with battery"),
        new NamedValue(0x1A, "rom-gsu-ram-battery-fast", "faster GSU, RAM with battery"),
        new NamedValue(0x25, "rom-obc1-ram-battery", "OBC1, RAM with battery"),
        new NamedValue(0x32, "rom-ram-battery-sa1", "SA-1, in use with the low half of a cart without coprocessor"),
        new NamedValue(0x34, "rom-sa1-ram", "SA-1, RAM"),
        new NamedValue(0x35, "rom-sa1-ram-battery", "SA-1, RAM with battery"),
        new NamedValue(0x43, "rom-sdd1", "S-DD1"),
        new NamedValue(0x45, "rom-sdd1-ram-battery", "S-DD1, RAM with battery"),
        new NamedValue(0x55, "rom-srtc-ram-battery", "S-RTC clock, RAM with battery"),
        new NamedValue(0xE3, "rom-other", "hand-held adapter or satellite base"),
        new NamedValue(0xE5, "rom-other-ram-battery", "hand-held adapter or satellite base, RAM with battery"),
        new NamedValue(0xF3, "rom-custom", "the chip chipsetSubtype names"),
        new NamedValue(0xF5, "rom-custom-ram-battery", "the chip chipsetSubtype names, RAM with battery"),
        new NamedValue(0xF6, "rom-custom-battery", "the chip chipsetSubtype names, with battery"),
        new NamedValue(0xF9, "rom-custom-ram-battery-clock", "the chip chipsetSubtype names, RAM with battery, clock"));

    public static NamedValues ChipsetSubtype { get; } = new(
        new NamedValue(0x00, "spc7110"),
        new NamedValue(0x01, "st010", "ST010 or ST011"),
        new NamedValue(0x02, "st018"),
        new NamedValue(0x10, "cx4"));

    public static NamedValues Speed { get; } = new(
        new NamedValue(0, "slow", "200 ns parts"),
        new NamedValue(1, "fast", "120 ns parts; counts for banks $80-$FF once the program sets the speed register"));

    public static NamedValues DeveloperId { get; } = new(
        new NamedValue(0x00, "none", "none, as homebrew has it"),
        new NamedValue(0x33, Extended, "makerCode counts, and with it the extended header"));

    public static NamedValues Region { get; } = new(
        [.. SnesCountry.All.Select(static row => new NamedValue(row.Code, row.Name, row.Television is null ? row.Meaning : $"{row.Meaning} ({row.Television})"))]);

    /// <summary>1 &lt;&lt; n KiB for every n up to 13: 8 MiB, the most the console can address.</summary>
    public static SizeCode RomSize { get; } = new([.. Powers(0, 13)]);

    /// <summary>0 is none; 2 KiB and up.</summary>
    public static SizeCode SaveRam { get; } = new([(0, 0), .. Powers(1, 8)]);

    public static SizeCode Expansion { get; } = new([(0, 0), .. Powers(1, 13)]);

    public static NamedValues MapMode(SnesMapping mapping) => new(mapping == SnesMapping.Exlorom ? [Exlorom, .. Modes] : Modes);

    /// <summary>True for a chipset byte whose coprocessor is named by the sub-type.</summary>
    public static bool IsCustom(ulong chipset) => (chipset & 0xF0) == 0xF0 && (chipset & 0x0F) >= 3;

    private static IEnumerable<(ulong Code, long Bytes)> Powers(int first, int last) =>
        Enumerable.Range(first, last - first + 1).Select(static code => ((ulong)code, 1024L << code));
}
