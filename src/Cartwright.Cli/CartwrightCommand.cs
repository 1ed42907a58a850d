using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Cartwright.Cli;

/// <summary>The whole command line: parse, call, print.</summary>
internal static class CartwrightCommand
{
    /// <summary>Runs the command.</summary>
    /// <param name="arguments">The words after the command's name.</param>
    /// <param name="output">Receives what was asked for.</param>
    /// <param name="errors">Receives findings and faults.</param>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static int Run(string[] arguments, TextWriter output, TextWriter errors)
    {
        var parsed = Root(output, errors).Parse(arguments);
        var faults = UsageFaults.Of(parsed).ToList();
        if (faults.Count > 0)
        {
            foreach (var fault in faults)
            {
                errors.WriteLine($"cartwright: {fault}");
            }

            errors.WriteLine("cartwright: `cartwright --help` lists the verbs, `cartwright VERB --help` the options of one.");
            return ExitCode.Refused;
        }

        return Invoke(parsed, output, errors, arguments);
    }

    private static int Invoke(ParseResult parsed, TextWriter output, TextWriter errors, string[] arguments)
    {
        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false });
        }
#pragma warning disable CA1031 // The last line of defence: whatever failed, the user gets a sentence to report, not a stack trace.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            errors.WriteLine($"cartwright: this is a fault of cartwright {LibraryVersion.Text} itself: {fault.GetType().Name}: {fault.Message}");
            errors.WriteLine($"cartwright: please report it with the command line: {string.Join(' ', arguments)}");
            return ExitCode.Failed;
        }
    }

    /// <summary>The verbs and options. No RootCommand: that one is called after the file it runs from.</summary>
    internal static Command Root(TextWriter output, TextWriter errors)
    {
        return new Command("cartwright", "Takes a homebrew game from assembled programs to chip images for a real cartridge.")
        {
            NewVerb.Create(output, errors),
            BuildVerb.Create(output, errors),
            ExamineVerb.Create(output, errors),
            AdoptVerb.Create(output, errors),
            MendVerb.Create(output, errors),
            PatchVerb.Create(output, errors),
            ArrangeVerb.Create(output, errors),
            PlanVerb.Create(output, errors),
            PatternVerb.Create(output, errors),
            ProveVerb.Create(output, errors),
            RunVerb.Create(output, errors),
            SaveVerb.Create(output, errors),
            SheetVerb.Create(output, errors),
            PlatformsVerb.Create(output, errors),
            BoardsVerb.Create(output, errors),
            PartsVerb.Create(output, errors),
            CompletionVerb.Create(output, () => Root(output, errors)),
            ManualVerb.Create(output, errors, () => Root(output, errors)),
            Switch("--help", "Shows this help.", recursive: true, new HelpWithExamples(new HelpAction())),
            Switch("--version", "Shows the version.", recursive: false, new VersionAction()),
        };
    }

    // The library's own options for these read their descriptions from resources, a twentieth of a small build's time.
    private static Option<bool> Switch(string name, string description, bool recursive, CommandLineAction action) =>
        new(name) { Description = description, Arity = ArgumentArity.Zero, Recursive = recursive, Action = action };
}
