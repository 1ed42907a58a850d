using Xunit;

namespace Cartwright.Packages.Tests;

/// <summary>What the library as it is here makes of a cart: what every package must make of it too.</summary>
internal static class OwnBuild
{
    /// <summary>Fails unless a folder holds just the files that a build of the manifest puts out.</summary>
    public static void Equal(string manifest, string folder)
    {
        var build = CartBuilder.Default.Build(new BuildRequest(manifest));
        Assert.False(build.HasErrors);
        var files = CartOutput.Write(build, dryRun: true).Files;
        Assert.Equal(files.Select(static file => file.File.Name).Order(StringComparer.Ordinal), Directory.EnumerateFileSystemEntries(folder).Select(path => Path.GetRelativePath(folder, path)).Order(StringComparer.Ordinal));
        Assert.All(files, file => Assert.True(file.IsIn(folder), $"{file.File.Name} holds something else."));
    }
}
