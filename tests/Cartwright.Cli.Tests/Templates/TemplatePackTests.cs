using System.Reflection;
using Cartwright.Platforms;
using Cartwright.Tests;
using Xunit;

namespace Cartwright.Cli.Tests.Templates;

public sealed class TemplatePackTests
{
    private static readonly string Composed = typeof(TemplatePackTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(static attribute => attribute.Key == "Templates").Value!;

    [Fact]
    public void The_command_carries_just_what_the_package_holds()
    {
        var composed = Directory.EnumerateFiles(Composed, "*", SearchOption.AllDirectories)
            .Select(static path => new TemplateFile(Path.GetRelativePath(Composed, path).Replace('\\', '/'), File.ReadAllBytes(path)))
            .ToDictionary(static file => file.Path, static file => file.Bytes.ToArray());
        if (Approved.Updates)
        {
            File.WriteAllBytes(Path.Combine(Approved.Root, "src", "Cartwright.Cli", TemplatePack.Resource), TemplatePack.Pack(composed.Select(static file => new TemplateFile(file.Key, file.Value))));
            return;
        }

        Assert.Equal(composed, TemplatePack.Open().ToDictionary(static file => file.Path, static file => file.Bytes.ToArray()));
    }

    [Fact]
    public void There_is_one_for_every_platform() => Assert.Equal(
        PlatformCatalog.BuiltIn.All.Select(static platform => platform.Facts.Id).Order(StringComparer.Ordinal),
        TemplateFamily.All(TemplatePack.Open()).SelectMany(static family => family.Platforms).Order(StringComparer.Ordinal));
}
