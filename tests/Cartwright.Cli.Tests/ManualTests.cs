using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>The pages of the manual in <c>docs/man</c>.</summary>
public sealed class ManualTests
{
    private static readonly Dictionary<string, string> Texts = ManualPage.All(CartwrightCommand.Root(TextWriter.Null, TextWriter.Null))
        .ToDictionary(static row => row.Page, static row => ManualPage.Of(row.Page, row.Command), StringComparer.Ordinal);

    public static TheoryData<string> Pages => [.. Texts.Keys];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_says_what_the_help_says(string page) => Approved.Equal($"docs/man/{page}.1", Texts[page]);

    [Fact]
    public void There_is_no_page_of_a_verb_that_is_gone() =>
        Assert.Equal(Texts.Keys.Order(StringComparer.Ordinal), Directory.EnumerateFiles(Path.Combine(Approved.Root, "docs", "man")).Select(static path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Pages))]
    public void Groff_sets_a_page_without_a_warning_and_shows_every_word_of_an_example(string page)
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, page), Texts[page]);

        var set = Tool.Run("groff", folder.Path, "-man", "-ww", "-Tascii", "-P-cbou", page);

        Assert.Equal((0, ""), (set.ExitCode, set.Error));
        var help = CommandRun.Here([.. page.Split('-').Skip(1), "--help"]).Output;
        if (help.Split("Examples:\n") is [_, var examples])
        {
            Assert.All(examples.Split('\n', StringSplitOptions.RemoveEmptyEntries), example => Assert.Contains(example.Trim(), set.Output, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_command_prints_them()
    {
        Assert.Equal(Texts["cartwright"], CommandRun.Here("manual").Output);
        Assert.Equal(Texts["cartwright-parts-fit"], CommandRun.Here("manual", "parts", "fit").Output);
        Assert.Equal(2, CommandRun.Here("manual", "bild").ExitCode);
    }
}
