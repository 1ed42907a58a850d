using System.Collections.Immutable;

namespace Cartwright.Findings;

/// <summary>Collects findings while a request is worked on, so that all of them are told at once.</summary>
public sealed class FindingLog
{
    private readonly List<Finding> _findings = [];

    /// <summary>True when at least one finding is an error.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>Number of findings so far.</summary>
    public int Count => _findings.Count;

    /// <summary>Adds one finding.</summary>
    /// <param name="finding">The finding to keep.</param>
    public void Add(Finding finding)
    {
        HasErrors |= finding.Severity == FindingSeverity.Error;
        _findings.Add(finding);
    }

    /// <summary>Adds findings that another log has collected.</summary>
    /// <param name="findings">The findings to keep.</param>
    public void AddAll(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            Add(finding);
        }
    }

    /// <summary>Adds one finding from its parts.</summary>
    /// <param name="rule">The row of the findings table.</param>
    /// <param name="place">Where it is.</param>
    /// <param name="message">What is wrong, one sentence.</param>
    /// <param name="expected">What was expected, or null.</param>
    /// <param name="remedy">What to do, or null for the rule's advice.</param>
    public void Add(FindingRule rule, SourcePlace place, string message, string? expected = null, string? remedy = null) =>
        Add(new Finding(rule, place, message, expected, remedy));

    /// <summary>All findings: those with a place first by file, line and column, equal places in the order they were found.</summary>
    public ImmutableArray<Finding> ToSorted() => _findings.Count < 2 ? [.. _findings] :
    [
        .. _findings
            .OrderBy(static f => f.Place.File ?? "\uffff", StringComparer.Ordinal)
            .ThenBy(static f => f.Place.Line)
            .ThenBy(static f => f.Place.Column)
            .ThenBy(static f => f.Place.Offset ?? -1),
    ];
}
