using System.Collections.Immutable;
using Cake.Core;
using Cake.Core.Diagnostics;
using Cartwright.Findings;

namespace Cartwright.Cake;

/// <summary>Puts findings into Cake's log, each at its level, and fails the task when one is an error.</summary>
internal static class FindingReport
{
    /// <summary>Logs the findings.</summary>
    /// <exception cref="CakeException">One of them is an error.</exception>
    public static void Write(ICakeContext context, string what, ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings)
        {
            var (verbosity, level) = Level(finding.Severity);
            context.Log.Write(verbosity, level, "{0}", FindingText.Line(finding));
        }

        if (findings.Count(static finding => finding.Severity == FindingSeverity.Error) is > 0 and var errors)
        {
            throw new CakeException($"{what}: {errors} error{(errors == 1 ? "" : "s")}, the first: {findings.First(static finding => finding.Severity == FindingSeverity.Error).Message}");
        }
    }

    private static (Verbosity Verbosity, LogLevel Level) Level(FindingSeverity severity) => severity switch
    {
        FindingSeverity.Error => (Verbosity.Quiet, LogLevel.Error),
        FindingSeverity.Warning => (Verbosity.Minimal, LogLevel.Warning),
        _ => (Verbosity.Normal, LogLevel.Information),
    };
}
