using System.Diagnostics;
using Xunit;

namespace Cartwright.Tests.Oracles;

/// <summary>Runs general-purpose tools that check our results from outside.</summary>
internal static class Tool
{
    private static readonly TimeSpan TimeLimit = TimeSpan.FromSeconds(30);

    /// <summary>The tool's full path. A test whose tool is missing is reported as skipped.</summary>
    public static string Require(string name)
    {
        foreach (var folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (var file in new[] { name, name + ".exe" })
            {
                var path = Path.Combine(folder, file);
                if (File.Exists(path)) return path;
            }
        }

        Assert.Skip($"The tool '{name}' is not on the PATH.");
        return name;
    }

    /// <summary>Runs a tool in a folder and waits for it.</summary>
    public static ToolResult Run(TempFolder folder, string name, params string[] arguments)
    {
        var start = new ProcessStartInfo(Require(name), arguments)
        {
            WorkingDirectory = folder.Path,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["LC_ALL"] = "C";
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"'{name}' did not start.");
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(TimeLimit))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"'{name}' was still running after {TimeLimit}.");
        }

        return new ToolResult(process.ExitCode, output.GetAwaiter().GetResult(), errors.GetAwaiter().GetResult());
    }

    /// <summary>Runs a tool that has to succeed, and gives its standard output.</summary>
    public static string Succeed(TempFolder folder, string name, params string[] arguments)
    {
        var result = Run(folder, name, arguments);
        Assert.True(result.ExitCode == 0, $"{name} {string.Join(' ', arguments)}: exit code {result.ExitCode}\n{result.Errors}");
        return result.Output;
    }
}
