using System.Diagnostics;
using System.Reflection;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Packages.Tests;

/// <summary>A fresh folder whose only source of packages is the local feed, as a user would have who has downloaded nothing but ours.</summary>
internal sealed class Bench : IDisposable
{
    private static readonly TimeSpan TimeLimit = TimeSpan.FromMinutes(4);

    private readonly TempFolder _folder = new();

    public Bench() => File.WriteAllText(At("nuget.config"), $"""
        <configuration>
          <config><add key="globalPackagesFolder" value="packages" /></config>
          <packageSources><clear /><add key="feed" value="{Feed}" /></packageSources>
          <fallbackPackageFolders><clear /><add key="machine" value="{MachinePackages}" /></fallbackPackageFolders>
        </configuration>
        """);

    public static string Feed { get; } = Path.TrimEndingDirectorySeparator(Metadata("PackageFeed"));

    public static string Version { get; } = Metadata("PackageVersion");

    /// <summary>The configuration everything was built in.</summary>
    public static string Configuration { get; } = Metadata("PackageConfiguration");

    public static string MachinePackages { get; } = Metadata("MachinePackages");

    public static string CakeVersion { get; } = Metadata("CakeVersion");

    /// <summary>Cake, as `dotnet cake` runs it.</summary>
    public static string Cake { get; } = Path.Combine(MachinePackages, "cake.tool", CakeVersion, "tools", "net10.0", "any", "Cake.dll");

    public string Folder => _folder.Path;

    public string At(params string[] names) => Path.Combine([Folder, .. names]);

    public void Write(string name, string text) => File.WriteAllText(At(name), text);

    /// <summary>Copies an example's manifest and programs; gives the manifest.</summary>
    public string CopyCart(string example, string folder = "")
    {
        var source = Path.Combine(Approved.Root, "examples", example);
        Directory.CreateDirectory(At(folder, "out"));
        File.Copy(Path.Combine(source, "cart.json"), At(folder, "cart.json"));
        foreach (var program in Directory.EnumerateFiles(Path.Combine(source, "out")))
        {
            File.Copy(program, At(folder, "out", Path.GetFileName(program)));
        }

        return At(folder, "cart.json");
    }

    /// <summary>Runs `dotnet` in the folder.</summary>
    public ToolResult DotNet(params string[] arguments) => Run("dotnet", arguments);

    /// <summary>Runs `dotnet`, which has to succeed; gives its output.</summary>
    public string Succeed(params string[] arguments)
    {
        var result = DotNet(arguments);
        Assert.True(result.ExitCode == 0, $"dotnet {string.Join(' ', arguments)}: exit code {result.ExitCode}\n{result.Output}\n{result.Error}");
        return result.Output;
    }

    public ToolResult Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = Folder };
        foreach (var name in start.Environment.Keys.Where(static name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || name is "NUGET_PACKAGES" or "Configuration").ToList())
        {
            start.Environment.Remove(name);
        }

        // Nothing is left running behind a test.
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        start.Environment["UseSharedCompilation"] = "false";
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        start.Environment["DOTNET_NOLOGO"] = "1";
        start.Environment["NO_COLOR"] = "1";
        return Tool.Run(start, TimeLimit);
    }

    public void Dispose() => _folder.Dispose();

    private static string Metadata(string key) =>
        typeof(Bench).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(attribute => attribute.Key == key).Value!;
}
