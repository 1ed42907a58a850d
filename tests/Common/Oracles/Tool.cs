using System.Diagnostics;
using Xunit;

namespace Cartwright.Tests.Oracles;

/// <summary>Runs general-purpose tools that check our results from outside.</summary>
internal static class Tool
{
    private static readonly TimeSpan TimeLimit = TimeSpan.FromSeconds(30);

    /// <summary>True when a tool of that name is on the search path.</summary>
    public static bool Exists(string name) => Find(name) is not null;

    /// <summary>Skips the running test, and says why, when the tool is not installed.</summary>
    public static void Require(string name)
    {
        if (!Exists(name))
            Assert.Skip($"The tool '{name}' is not on the PATH.");
    }

    /// <summary>Runs a tool in a folder and waits for it.</summary>
    public static ToolResult Run(string name, string folder, params string[] arguments)
    {
        Require(name);
        var start = new ProcessStartInfo(Find(name)!, arguments) { WorkingDirectory = folder };
        start.Environment["LC_ALL"] = "C";
        return Run(start, TimeLimit);
    }

    /// <summary>Runs a program and waits for it.</summary>
    public static ToolResult Run(ProcessStartInfo start, TimeSpan limit)
    {
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"'{start.FileName}' did not start.");
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(limit))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"'{start.FileName}' was still running after {limit}.");
        }

        return new ToolResult(process.ExitCode, output.GetAwaiter().GetResult(), error.GetAwaiter().GetResult());
    }

    /// <summary>Runs a tool that has to succeed, and gives its standard output.</summary>
    public static string Succeed(string name, string folder, params string[] arguments)
    {
        var result = Run(name, folder, arguments);
        Assert.True(result.ExitCode == 0, $"{name} {string.Join(' ', arguments)}: exit code {result.ExitCode}\n{result.Error}");
        return result.Output;
    }

    private static string? Find(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(folder => new[] { Path.Combine(folder, name), Path.Combine(folder, name + ".exe") })
            .FirstOrDefault(File.Exists);
}
