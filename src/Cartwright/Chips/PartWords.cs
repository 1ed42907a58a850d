namespace Cartwright.Chips;

/// <summary>The words of the parts table.</summary>
internal static class PartWords
{
    public static WordTable<PartKind> Kinds { get; } = new(
        ("nor-flash", "NOR flash", PartKind.NorFlash),
        ("uv-eprom", "UV EPROM", PartKind.UvEprom),
        ("otp", "OTP ROM", PartKind.Otp),
        ("eeprom", "EEPROM", PartKind.Eeprom),
        ("sram", "SRAM", PartKind.Sram),
        ("fram", "FRAM", PartKind.Fram));

    public static WordTable<PartDataBus> DataBuses { get; } = new(
        ("8", "8-bit", PartDataBus.Eight),
        ("16", "16-bit", PartDataBus.Sixteen),
        ("8/16 selectable", "8-bit or 16-bit", PartDataBus.Selectable),
        ("serial", "serial", PartDataBus.Serial));

    /// <summary>Data lines as a manifest states them.</summary>
    public static WordTable<PartDataBus> Widths { get; } = new(
        ("8", "8-bit", PartDataBus.Eight),
        ("16", "16-bit", PartDataBus.Sixteen),
        ("8/16", "8-bit or 16-bit", PartDataBus.Selectable));

    public static WordTable<SupplyClass> SupplyClasses { get; } = new(
        ("5V", "5V", SupplyClass.FiveVolt),
        ("3V", "3V", SupplyClass.ThreeVolt),
        ("1.8V", "1.8V", SupplyClass.OnePointEightVolt),
        ("mixed", "mixed", SupplyClass.Mixed));

    public static WordTable<FiveVoltTolerance> Tolerances { get; } = new(
        ("yes", "yes", FiveVoltTolerance.Yes),
        ("no", "no", FiveVoltTolerance.No),
        ("unknown", "unknown", FiveVoltTolerance.Unknown));

    public static WordTable<PartStatus> Statuses { get; } = new(
        ("verified", "verified", PartStatus.Verified),
        ("partly verified", "partly verified", PartStatus.PartlyVerified),
        ("from memory", "from memory", PartStatus.FromMemory),
        ("described", "as described", PartStatus.Described));

    public static WordTable<PinOutStatus> PinOutStatuses { get; } = new(
        ("seen", "seen in the data sheet", PinOutStatus.Seen),
        ("library", "from a third party", PinOutStatus.Library),
        ("derived", "worked out from another", PinOutStatus.Derived),
        ("from memory", "from memory", PinOutStatus.FromMemory));
}
