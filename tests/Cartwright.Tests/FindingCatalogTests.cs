using System.Reflection;
using System.Text.RegularExpressions;
using Cartwright.Documents;
using Cartwright.Findings;
using Xunit;

namespace Cartwright.Tests;

public sealed partial class FindingCatalogTests
{
    [Fact]
    public void The_page_of_findings_is_up_to_date() => Approved.Equal("docs/findings.md", FindingPage.Markdown(FindingCatalog.Groups));

    [Fact]
    public void Codes_are_of_one_form_unique_and_in_order()
    {
        var codes = FindingCatalog.All.Select(rule => rule.Code).ToList();
        Assert.All(codes, code => Assert.Matches(@"^CW\d{4}$", code));
        Assert.Equal(codes.Distinct().Order(StringComparer.Ordinal), codes);
        Assert.All(FindingCatalog.Groups, group => Assert.Equal(group.Rules.OrderBy(rule => rule.Code, StringComparer.Ordinal), group.Rules));
    }

    [Fact]
    public void Every_rule_of_the_library_is_in_the_catalogue() =>
        Assert.Empty(Members().Where(member => !FindingCatalog.All.Contains(member.Rule)).Select(member => $"{member.Name} {member.Rule.Code}"));

    [Fact]
    public void Rules_stand_in_classes_whose_names_say_so() =>
        Assert.All(Members(), member => Assert.Contains("Findings.", member.Name, StringComparison.Ordinal));

    [Fact]
    public void Texts_are_sentences_and_titles_are_not()
    {
        Assert.All(FindingCatalog.All, rule =>
        {
            Assert.True(IsSentence(rule.Why), $"{rule.Code}: {rule.Why}");
            Assert.True(IsSentence(rule.Remedy), $"{rule.Code}: {rule.Remedy}");
            Assert.True(rule.Title.Length is > 3 and < 80 && !rule.Title.EndsWith('.'), $"{rule.Code}: {rule.Title}");
        });
    }

    [Fact]
    public void A_rule_is_found_by_its_code()
    {
        Assert.Equal("CW1003", FindingCatalog.Find(" cw1003 ")?.Code);
        Assert.Null(FindingCatalog.Find("CW0000"));
    }

    // Shows that somebody thought of a test for each rule: its code or its member is named in some test's source. It cannot show that the
    // test really raises it, nor that the test is a good one; a rule that no test names at all is certainly not tested.
    [Fact]
    public void Every_rule_is_named_by_a_test()
    {
        var sources = Directory.EnumerateFiles(Path.Combine(Approved.RepositoryRoot(), "tests"), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(folder => folder is "obj" or "bin"))
            .Select(File.ReadAllText);
        var named = sources.SelectMany(text => Mention().Matches(text).Select(match => match.Value)).ToHashSet(StringComparer.Ordinal);
        var forgotten = Members().Where(member => !named.Contains(member.Rule.Code) && !named.Contains(member.Name)).Select(member => $"{member.Name} {member.Rule.Code}");
        Assert.Equal("", string.Join(", ", forgotten.Order(StringComparer.Ordinal)));
    }

    private static bool IsSentence(string text) => text.Length > 5 && !char.IsLower(text[0]) && text.EndsWith('.');

    private static IEnumerable<(string Name, FindingRule Rule)> Members()
    {
        const BindingFlags statics = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;
        foreach (var type in typeof(FindingRule).Assembly.GetTypes())
        {
            foreach (var field in type.GetFields(statics).Where(field => field.FieldType == typeof(FindingRule) && !field.Name.StartsWith('<')))
                yield return ($"{type.Name}.{field.Name}", (FindingRule)field.GetValue(null)!);
            foreach (var property in type.GetProperties(statics).Where(property => property.PropertyType == typeof(FindingRule)))
                yield return ($"{type.Name}.{property.Name}", (FindingRule)property.GetValue(null)!);
        }
    }

    [GeneratedRegex(@"CW\d{4}|\b\w+Findings\.\w+")]
    private static partial Regex Mention();
}
