using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

public sealed class CompletionTests
{
    public static TheoryData<string> Shells => [.. CompletionScripts.All.Select(static row => row.Shell)];

    [Theory]
    [MemberData(nameof(Shells))]
    public void The_script_is_the_approved_one(string shell)
    {
        var printed = CommandRun.Here("completion", shell);
        Assert.Equal((0, ""), (printed.ExitCode, printed.Errors));
        Approved.Equal($"tests/cases/completion/{shell}.txt", printed.Output);
    }

    [Theory]
    [InlineData("bash", "bash", "-n")]
    [InlineData("zsh", "zsh", "-n")]
    [InlineData("fish", "fish", "--no-execute")]
    public void The_shell_itself_can_read_it(string shell, params string[] command)
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "script"), CommandRun.Here("completion", shell).Output);
        Assert.Equal("", Tool.Run(command[0], folder.Path, command[1], "script").Error);
    }

    [Theory]
    [InlineData("cartwright bui", "build")]
    [InlineData("cartwright build --sa", "--sarif")]
    [InlineData("cartwright parts id", "identify")]
    [InlineData("cartwright parts fit --boar", "--board")]
    [InlineData("cartwright examine game.bin --platform sn", "snes")]
    [InlineData("cartwright platforms a78", "a7800")]
    [InlineData("cartwright new vec", "vectrex")]
    [InlineData("cartwright boards gb-single-8", "gb-single-8bit")]
    [InlineData("cartwright arrange game.bin --word-order pro", "programmer")]
    [InlineData("cartwright plan a b --boot to", "top")]
    [InlineData("cartwright build --help --dry", "--dry-run")]
    [InlineData("cartwright build bui", "")]
    public void Bash_completes_a_word(string line, string expected)
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "script"), CommandRun.Here("completion", "bash").Output);
        var words = line.Split(' ');
        File.WriteAllText(Path.Combine(folder.Path, "ask"), $"source ./script\nCOMP_WORDS=({line})\nCOMP_CWORD={words.Length - 1}\n_cartwright\necho \"${{COMPREPLY[*]}}\"\n");

        Assert.Equal(expected + "\n", Tool.Succeed("bash", folder.Path, "ask"));
    }

    [Theory]
    [InlineData("cartwright bui", "build")]
    [InlineData("cartwright build --sa", "--sarif")]
    [InlineData("cartwright parts id", "identify")]
    [InlineData("cartwright examine game.bin --platform sn", "snes")]
    [InlineData("cartwright new vec", "vectrex")]
    [InlineData("cartwright plan a b --part M27C64", "M27C64A")]
    public void Fish_completes_a_word(string line, string expected)
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "script"), CommandRun.Here("completion", "fish").Output);

        var found = Tool.Succeed("fish", folder.Path, "--no-config", "-c", $"source script; complete -C '{line}'");

        Assert.Equal(expected, Assert.Single(found.TrimEnd('\n').Split('\n')).Split('\t')[0]);
    }

    // The zsh function is called with the words it would be given; what it would describe is printed.
    [Theory]
    [InlineData("cartwright parts id", "identify")]
    [InlineData("cartwright examine game.bin --platform sn", "snes")]
    [InlineData("cartwright new vec", "vectrex")]
    public void Zsh_is_offered_a_word(string line, string expected)
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "script"), CommandRun.Here("completion", "zsh").Output);
        var count = line.Split(' ').Length;
        File.WriteAllText(Path.Combine(folder.Path, "ask"), $"compdef() {{ }}\nsource ./script\n_describe() {{ print -l -- $found }}\nwords=({line}); CURRENT={count}\n_cartwright\n");

        Assert.Contains(expected, Tool.Succeed("zsh", folder.Path, "-f", "ask").Split('\n').Select(static row => row.Split(':')[0]));
    }
}
