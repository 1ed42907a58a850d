using Cake.Core;
using Cake.Core.Configuration;
using Cake.Core.Diagnostics;
using Cake.Core.IO;
using Cake.Core.Tooling;

namespace Cartwright.Packages.Tests.Aliases;

/// <summary>The context of a compiled Cake project, with the parts an alias may use: the log, and a surrounding with a working folder of its own.</summary>
internal sealed class CompiledContext(string folder) : ICakeContext, ICakeEnvironment
{
    public RecordedLog Recorded { get; } = new();

    public Dictionary<string, string> Variables { get; } = [];

    public ICakeLog Log => Recorded;

    public ICakeEnvironment Environment => this;

    public DirectoryPath WorkingDirectory { get; set; } = folder;

    public IDictionary<string, string> GetEnvironmentVariables() => Variables;

    public string GetEnvironmentVariable(string variable) => Variables[variable];

    public IFileSystem FileSystem => throw new NotSupportedException();

    public IGlobber Globber => throw new NotSupportedException();

    public ICakeArguments Arguments => throw new NotSupportedException();

    public IProcessRunner ProcessRunner => throw new NotSupportedException();

    public IRegistry Registry => throw new NotSupportedException();

    public IToolLocator Tools => throw new NotSupportedException();

    public ICakeDataResolver Data => throw new NotSupportedException();

    public ICakeConfiguration Configuration => throw new NotSupportedException();

    public DirectoryPath ApplicationRoot => throw new NotSupportedException();

    public ICakePlatform Platform => throw new NotSupportedException();

    public ICakeRuntime Runtime => throw new NotSupportedException();

    public DirectoryPath GetSpecialPath(SpecialPath path) => throw new NotSupportedException();
}
