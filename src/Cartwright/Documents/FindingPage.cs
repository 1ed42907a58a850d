using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;

namespace Cartwright.Documents;

/// <summary>Every finding, what it means and what to do about it.</summary>
public static class FindingPage
{
    private const string Head = """
        Everything that Cartwright may find. This page is generated from the table the checks themselves use.

        On the command line a finding is one line in the form that editors and build servers read:
        `cart.json(12,15): error CW1003: …`. Codes keep their meaning from version to version.

        - An **error** means that the request cannot be carried out, or that the result would be wrong. A build with an error writes nothing.
        - A **warning** is likely to hurt on a board or to mislead other readers of the image. It does not stop a build.
        - A **note** is worth knowing; nothing is wrong.
        """;

    /// <summary>Writes the page.</summary>
    /// <param name="groups">The findings by stage and platform.</param>
    public static string Markdown(ImmutableArray<FindingGroup> groups)
    {
        var page = new MarkdownPage();
        page.Heading(1, "Findings");
        page.Paragraph(Head);
        page.Table(["codes", "about", "findings"], groups.Select(static group => ImmutableArray.Create(
            $"[{group.Rules[0].Code} to {group.Rules[^1].Code}](#{Anchor(group.Rules[0])})",
            group.Title,
            group.Rules.Length.ToString(CultureInfo.InvariantCulture))));
        foreach (var group in groups)
        {
            page.Heading(2, group.Title);
            foreach (var rule in group.Rules)
            {
                WriteRule(page, rule);
            }
        }

        return page.ToString();
    }

    private static void WriteRule(MarkdownPage page, FindingRule rule)
    {
        page.Paragraph($"<a id=\"{Anchor(rule)}\"></a>");
        page.Heading(3, $"{rule.Code}: {rule.Title}");
        page.List([$"Severity: {FindingText.Word(rule.Severity)}", $"Why it matters: {rule.Why}", $"What to do: {rule.Remedy}"]);
    }

    private static string Anchor(FindingRule rule) => rule.Code.ToLowerInvariant();
}
