using System.Reflection;
using Cartwright.Cli.Tests.Cases;
using Xunit;

namespace Cartwright.Cli.Tests;

public sealed class VersionTests
{
    [Fact]
    public void The_constant_is_the_version_the_library_was_built_with() =>
        Assert.Equal(LibraryVersion.Text, typeof(LibraryVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion);

    [Fact]
    public void The_command_tells_it() => Assert.Equal($"{LibraryVersion.Text}\n", CommandRun.Here("--version").Output);

    // The program answers this one question without the parser.
    [Fact]
    public void The_started_command_tells_the_same() =>
        Assert.Equal(CommandRun.Here("--version"), CommandRun.InItsOwnProcess(AppContext.BaseDirectory, ["--version"], new Dictionary<string, string>()));
}
