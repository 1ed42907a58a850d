using System.CommandLine;
using System.CommandLine.Invocation;

namespace Cartwright.Cli;

/// <summary>Prints the library's version: the common action asks the assembly that was started, whichever that is.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine(LibraryVersion.Text);
        return ExitCode.Done;
    }
}
