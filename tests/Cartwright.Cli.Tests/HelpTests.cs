using System.CommandLine;
using System.CommandLine.Parsing;
using Cartwright.Cli.Tests.Cases;
using Xunit;

namespace Cartwright.Cli.Tests;

public sealed class HelpTests
{
    private static readonly Command Root = CartwrightCommand.Root(TextWriter.Null, TextWriter.Null);

    public static TheoryData<string> Verbs => [.. Root.Subcommands.Select(static verb => verb.Name)];

    [Theory]
    [MemberData(nameof(Verbs))]
    public void Every_example_in_the_help_is_a_line_the_command_takes(string name)
    {
        var help = CommandRun.Here(name, "--help");
        Assert.Equal((0, ""), (help.ExitCode, help.Errors));
        Assert.Contains("Examples:\n", help.Output, StringComparison.Ordinal);
        var examples = help.Output.Split("Examples:\n")[^1].Split('\n').Select(static line => line.Trim()).Where(static line => line.StartsWith("cartwright ", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(examples);
        Assert.All(examples, example =>
        {
            var words = CommandLineParser.SplitCommandLine(example).Skip(1).ToArray();
            Assert.Equal(name, words[0]);
            Assert.Empty(UsageFaults.Of(Root.Parse(words)));
        });
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public void Every_option_is_spelt_out_and_described(string name)
    {
        var verb = Root.Subcommands.Single(verb => verb.Name == name);
        Assert.False(string.IsNullOrWhiteSpace(verb.Description));
        Assert.All(verb.Options, static option => Assert.True(option.Name.StartsWith("--", StringComparison.Ordinal) && option.Aliases.Count == 0 && option.Description?.Length > 0, option.Name));
        Assert.All(verb.Arguments, static argument => Assert.False(string.IsNullOrWhiteSpace(argument.Description)));
    }
}
