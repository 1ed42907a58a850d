using System.Text;
using Cartwright;
using Cartwright.Cli;
using Microsoft.Win32.SafeHandles;

// The commonest question of a script needs neither a parser nor the console's own set-up, which costs more than the answer.
if (args is ["--version"])
{
    using var handle = new SafeFileHandle(1, ownsHandle: false);
    using var standardOutput = new FileStream(handle, FileAccess.Write, bufferSize: 0);
    standardOutput.Write(Encoding.ASCII.GetBytes(LibraryVersion.Text + "\n"));
    return ExitCode.Done;
}

return CartwrightCommand.Run(args, Console.Out, Console.Error);
