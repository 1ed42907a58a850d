using System.Reflection;
using Cartwright.Cli.Tests.Cases;
using Xunit;

namespace Cartwright.Cli.Tests.Usage;

public sealed class VersionTests
{
    [Fact]
    public void The_version_is_the_library_s_own() =>
        Assert.Equal(LibraryVersion.Text, typeof(LibraryVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion);

    [Fact]
    public void The_command_prints_it() => Assert.Equal(new CaseResult(0, LibraryVersion.Text + "\n", ""), CommandRun.Here("--version"));

    // Program.cs answers this one question without the parser.
    [Fact]
    public void The_started_command_prints_the_same() =>
        Assert.Equal(CommandRun.Here("--version"), CommandRun.InItsOwnProcess(AppContext.BaseDirectory, ["--version"], new Dictionary<string, string>()));
}
