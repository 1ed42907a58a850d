using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Patching;
using Cartwright.Plans;
using Cartwright.Platforms;
using Cartwright.Production;
using Cartwright.Programs;
using Cartwright.Proofs;
using Cartwright.Roms;
using Cartwright.Saves;
using Cartwright.Slots;
using Cartwright.TestImages;

namespace Cartwright;

/// <summary>Everything any check may have to say.</summary>
public static class FindingCatalog
{
    private static readonly ImmutableArray<FindingGroup> Stages =
    [
        new("Manifest", ManifestFindings.All),
        new("Program files", ProgramFindings.All),
        new("Places and sizes", RomFindings.All),
        new("Header and checksums", HeaderFindings.All),
        new("Board", BoardFindings.All),
        new("Parts", PartFindings.All),
        new("What chips say of themselves", CfiFindings.All),
        new("Described parts", OwnPartFindings.All),
        new("Slots", SlotFindings.All),
        new("Write plan", PlanFindings.All),
        new("Output", OutputFindings.All),
        new("Production run", RunFindings.All),
        new("Existing images", InspectionFindings.All),
        new("Patches", PatchFindings.All),
        new("Read-backs", ProofFindings.All),
        new("Test images", TestImageFindings.All),
        new("Save files", SaveFindings.All),
    ];

    /// <summary>The rules by stage and platform, in order of their first codes.</summary>
    public static ImmutableArray<FindingGroup> Groups { get; } =
    [
        .. PlatformCatalog.BuiltIn.All
            .Where(static platform => !platform.Findings.IsEmpty)
            // Consoles that differ in little share their rules.
            .GroupBy(static platform => platform.Findings, static platform => platform.Facts.Name)
            .Select(static names => new FindingGroup(string.Join(", ", names), names.Key))
            .Concat(Stages)
            .OrderBy(static group => group.Rules[0].Code, StringComparer.Ordinal),
    ];

    /// <summary>Every rule, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [.. Groups.SelectMany(static group => group.Rules).OrderBy(static rule => rule.Code, StringComparer.Ordinal)];

    /// <summary>The rule of a code, letter case ignored; null when there is none.</summary>
    /// <param name="code">The code: <c>CW1003</c>.</param>
    public static FindingRule? Find(string code) =>
        All.FirstOrDefault(rule => string.Equals(rule.Code, code.Trim(), StringComparison.OrdinalIgnoreCase));
}
