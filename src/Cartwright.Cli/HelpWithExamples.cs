using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Cartwright.Cli;

/// <summary>The usual help, with the verb's examples below it.</summary>
internal sealed class HelpWithExamples(HelpAction help) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        help.Invoke(parseResult);
        if (parseResult.CommandResult.Command is Verb verb)
        {
            parseResult.InvocationConfiguration.Output.WriteLine("Examples:");
            foreach (var example in verb.Examples)
            {
                parseResult.InvocationConfiguration.Output.WriteLine("  " + example);
            }
        }

        return ExitCode.Done;
    }
}
