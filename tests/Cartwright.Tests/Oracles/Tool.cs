using System.Diagnostics;
using Xunit;

namespace Cartwright.Tests.Oracles;

/// <summary>Runs a general-purpose program whose answer a test compares with ours.</summary>
internal static class Tool
{
    /// <summary>True when a program of that name is on the search path.</summary>
    public static bool Exists(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Any(folder => File.Exists(Path.Combine(folder, name)) || File.Exists(Path.Combine(folder, name + ".exe")));

    /// <summary>Skips the running test, and says why, when the program is not installed.</summary>
    public static void Require(string name)
    {
        if (!Exists(name))
            Assert.Skip($"{name} is not installed.");
    }

    /// <summary>Runs a program to its end, in the C locale.</summary>
    public static ToolResult Run(string name, string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo(name, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["LC_ALL"] = "C";
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{name} did not start.");
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ToolResult(process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
