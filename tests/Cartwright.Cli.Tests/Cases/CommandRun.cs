using System.Diagnostics;

namespace Cartwright.Cli.Tests.Cases;

/// <summary>Runs the command: here, or as a process of its own where the current folder or variables count.</summary>
internal static class CommandRun
{
    public static CaseResult Here(params IReadOnlyList<string> arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var exit = CartwrightCommand.Run([.. arguments], output, errors);
        return new CaseResult(exit, output.ToString(), errors.ToString());
    }

    public static CaseResult InItsOwnProcess(string folder, IReadOnlyList<string> arguments, IReadOnlyDictionary<string, string> variables)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(CartwrightCommand).Assembly.Location, .. arguments])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in variables)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException("`dotnet` did not start.");
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        process.WaitForExit();
        return new CaseResult(process.ExitCode, output.GetAwaiter().GetResult(), errors.GetAwaiter().GetResult());
    }
}
