using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Chips;

/// <summary>Checks whether a part can carry its share of a program on a board.</summary>
/// <remarks>Nothing that is only known from memory is ever the reason of an error. What kind of memory a part is counts as known: it is
/// what the part is sold as.</remarks>
public static class PartChecks
{
    private const int MostProposals = 5;
    private const long VeryFewCycles = 100;
    private const long FewCycles = 1000;

    /// <summary>The part of that name; null, and a finding, when the catalogue has none.</summary>
    /// <param name="name">What the user wrote.</param>
    /// <param name="site">Name of the site, for example <c>U1</c>.</param>
    /// <param name="log">Where the finding goes.</param>
    /// <param name="place">Where the user wrote it.</param>
    public static Part? Find(string name, string site, FindingLog log, SourcePlace place)
    {
        var part = PartCatalog.BuiltIn.Find(name);
        if (part is null)
        {
            var nearest = PartCatalog.BuiltIn.Nearest(name);
            log.Add(
                PartFindings.Unknown,
                place,
                $"{site}: the catalogue has no part `{name}`.",
                remedy: nearest.IsEmpty ? null : $"Did you mean {string.Join(" or ", nearest)}? {PartFindings.Unknown.Remedy}");
        }

        return part;
    }

    /// <summary>Tells everything worth knowing about a part at a site that carries a program.</summary>
    /// <param name="part">The part.</param>
    /// <param name="use">What the board asks of it.</param>
    /// <param name="log">Where the findings go.</param>
    /// <param name="place">Where the user chose the part.</param>
    public static void Check(Part part, PartUse use, FindingLog log, SourcePlace place)
    {
        var report = new Report(part, use, log, place);
        if (!part.IsRom)
        {
            CheckKind(report);
            return;
        }

        CheckCapacity(report);
        CheckWidth(report);
        CheckSupply(report);
        CheckEvidence(report);
        CheckEndurance(report);
        CheckWriting(report);
    }

    /// <summary>Tells what is worth knowing before a chip is written: what its entry rests on, how often it stands it, and the usual cautions.</summary>
    /// <param name="part">The part.</param>
    /// <param name="site">What to call the chip: its site, or the file it is to hold.</param>
    /// <param name="log">Where the findings go.</param>
    /// <param name="place">Where the user chose the part.</param>
    public static void CheckWriting(Part part, string site, FindingLog log, SourcePlace place)
    {
        var report = new Report(part, new PartUse(0, 0, 0, site), log, place);
        CheckEvidence(report);
        CheckEndurance(report);
        CheckWriting(report);
    }

    private static void CheckKind(Report report)
    {
        var part = report.Part;
        var serial = part.DataBus == PartDataBus.Serial ? "serial " : "";
        report.Add(PartFindings.NotRom, $"{part.Name} is {serial}{PartWords.Kinds.Print(part.Kind)} and cannot carry a program.");
    }

    private static void CheckCapacity(Report report)
    {
        var (part, use) = (report.Part, report.Use);
        var missing = use.NeededBytes - part.CapacityBytes;
        if (missing <= 0)
            return;
        var seen = part.Evidence.SawCapacity;
        var rule = seen ? PartFindings.TooSmall : PartFindings.TooSmallFromMemory;
        report.Add(
            rule,
            $"{part.Name} holds {ByteSize.Describe(part.CapacityBytes)}{FromMemory(seen)}, {ByteSize.Describe(missing)} too few.",
            $"a part of at least {ByteSize.Describe(use.NeededBytes)}",
            Proposals(rule, use));
    }

    private static void CheckWidth(Report report)
    {
        var (part, use) = (report.Part, report.Use);
        if (part.Supports(use.Width))
            return;
        var seen = part.Evidence.SawDataBus;
        var rule = seen ? PartFindings.WrongWidth : PartFindings.WrongWidthFromMemory;
        report.Add(
            rule,
            Invariant($"{part.Name} is {PartWords.DataBuses.Print(part.DataBus)}{FromMemory(seen)}, the site has {use.Width} data lines."),
            Invariant($"a part that can be used with {use.Width} data lines"),
            Proposals(rule, use));
    }

    private static void CheckSupply(Report report)
    {
        var (part, volts) = (report.Part, report.Use.BusVolts);
        var supply = part.Supply;
        if (volts > supply.MaxVolts)
        {
            report.Add(
                PartFindings.SupplyTooHigh,
                Invariant($"{part.Name} is made for {supply.Text} V, the bus has {volts:0.0#} V; {InputsAt(part)}."));
        }
        else if (volts < supply.MinVolts)
        {
            report.Add(
                PartFindings.SupplyTooLow,
                Invariant($"{part.Name} is made for {supply.Text} V, the bus has only {volts:0.0#} V."));
        }
    }

    private static string InputsAt(Part part) => part.Supply.FiveVoltTolerantInputs switch
    {
        FiveVoltTolerance.Yes => $"its inputs stand 5 V ({part.Supply.FiveVoltSource}), its supply pin does not",
        FiveVoltTolerance.No => $"its inputs do not stand 5 V ({part.Supply.FiveVoltSource})",
        _ => "whether its inputs stand 5 V is not known, so count on it that they do not",
    };

    private static void CheckEvidence(Report report)
    {
        var evidence = report.Part.Evidence;
        if (evidence.Status == PartStatus.FromMemory)
            report.Add(PartFindings.FromMemory, $"everything the catalogue says about {report.Part.Name} is from memory.");
        else if (!evidence.SawCapacity)
            report.Add(PartFindings.FromMemory, $"the capacity of {report.Part.Name} in the catalogue is from memory.");
    }

    private static void CheckEndurance(Report report)
    {
        if (report.Part.Endurance.FewestCycles is not { } cycles || cycles > FewCycles)
            return;
        var origin = report.Part.Evidence.SawEndurance ? "a figure seen in the source of its catalogue entry" : "a figure from memory";
        report.Add(
            cycles <= VeryFewCycles ? PartFindings.VeryLowEndurance : PartFindings.LowEndurance,
            $"{report.Part.Name} is rated for {report.Part.Endurance.Text} erase and write cycles, {origin}.");
    }

    private static void CheckWriting(Report report)
    {
        var part = report.Part;
        if (part.Programming.NeedsHighVoltage)
        {
            var seen = part.Evidence.SawProgrammingVoltage;
            report.Add(
                PartFindings.HighVoltage,
                $"{part.Name} needs a programming voltage above its supply, in volts: {part.Programming.ProgrammingVoltage}{FromMemory(seen)}.");
        }

        if (part.Kind == PartKind.UvEprom)
            report.Add(PartFindings.UltravioletErase, $"{part.Name} is erased with ultraviolet light, the whole chip at once.");
        if (part.Kind == PartKind.Otp)
            report.Add(PartFindings.WrittenOnce, $"{part.Name} can be written once and not be erased.");
        if (part.Sectors.IsPageWrite)
            report.Add(PartFindings.WholePages, $"{part.Name} is written in whole pages: {part.Programming.Granularity}.");
    }

    // Only parts whose capacity was seen in a source are worth proposing.
    private static string Proposals(FindingRule rule, PartUse use)
    {
        var fitting = PartCatalog.BuiltIn.CouldHold(use.NeededBytes, use.Width, use.BusVolts).RemoveAll(static part => !part.Evidence.SawCapacity);
        var onThisBus = fitting.RemoveAll(part => !part.Supply.Covers(use.BusVolts));
        return fitting.IsEmpty ? $"{rule.Remedy} The catalogue has no part that would do."
            : onThisBus.IsEmpty ? $"{rule.Remedy} These would do with a supply and level translation of their own: {FirstNames(fitting)}."
            : $"{rule.Remedy} These would do: {FirstNames(onThisBus)}.";
    }

    private static string FirstNames(ImmutableArray<Part> parts) => string.Join(", ", parts.Take(MostProposals).Select(static part => part.Name));

    private static string FromMemory(bool seen) => seen ? "" : " (from memory)";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private readonly record struct Report(Part Part, PartUse Use, FindingLog Log, SourcePlace Place)
    {
        public void Add(FindingRule rule, string message, string? expected = null, string? remedy = null) =>
            Log.Add(rule, Place, $"{Use.Site}: {message}", expected, remedy);
    }
}
