using Cartwright.Findings;

namespace Cartwright.Sheets;

/// <summary>What can hurt somebody or something while this cart is made. Common practice, unless a finding names its source; data sheets have the figures.</summary>
internal static class BenchCautions
{
    // Codes of the findings about parts and boards begin with this.
    private const string AboutBoards = "CW5";

    /// <summary>A sentence or two for each: those of the build's own findings, and those of every bench.</summary>
    public static IEnumerable<string> Of(CartBuild build)
    {
        foreach (var rule in build.Findings.Where(static finding => finding.Code.StartsWith(AboutBoards, StringComparison.Ordinal) && finding.Severity != FindingSeverity.Error).Select(static finding => finding.Rule).Distinct())
        {
            yield return $"{rule.Title}: {rule.Why} {rule.Remedy}";
        }

        if (HasBattery(build))
        {
            yield return "Lithium cell: read the save out and keep the copy before you take the old cell out. Never charge, heat, short or solder a bare cell: use one with tags, or a holder. Mind the polarity, keep the diode that stops the console from charging it, tape the contacts of the old one and hand it in. The data sheets of cell and RAM say what they may see.";
        }

        yield return "Static: touch bare grounded metal before you touch a chip, and keep chips in their conductive foam until they are fitted.";
        yield return "Soldering: fumes go to the side, not into the face; wash your hands, as old solder holds lead. Let the board cool, clean the flux off, and look at every joint through a magnifier before power.";
        yield return "Power: fit, write and insert only with the power off. Check that supply and ground are not shorted, and that each chip is the right way round, before the first time it is on.";
    }

    // Platforms name it in a field of its own, or in the name of the board type.
    private static bool HasBattery(CartBuild build) => build.Cart!.Headers
        .SelectMany(static header => header.Entries)
        .Any(static entry => (entry.Field.Name.Contains("battery", StringComparison.OrdinalIgnoreCase) && entry.Text == "true") || entry.Text.Contains("battery", StringComparison.OrdinalIgnoreCase));
}
