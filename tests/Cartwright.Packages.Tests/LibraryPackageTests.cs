using System.IO.Compression;
using System.Xml.Linq;
using Xunit;

namespace Cartwright.Packages.Tests;

public sealed class LibraryPackageTests
{
    [Fact]
    public void It_holds_the_library_with_its_documentation_and_says_what_it_needs()
    {
        using var package = ZipFile.OpenRead(Path.Combine(Bench.Feed, $"Cartwright.{Bench.Version}.nupkg"));
        var names = package.Entries.Select(static entry => entry.FullName).ToList();
        Assert.Contains("lib/net10.0/Cartwright.dll", names);
        Assert.Contains("lib/net10.0/Cartwright.xml", names);
        Assert.Contains("README.md", names);
        using var nuspec = package.GetEntry("Cartwright.nuspec")!.Open();
        var about = XDocument.Load(nuspec).Root!.Elements().Single();
        var space = about.Name.Namespace;
        Assert.Equal("MIT", about.Element(space + "license")?.Value);
        Assert.Equal("README.md", about.Element(space + "readme")?.Value);
        Assert.All(about.Descendants(space + "dependency"), static needed => Assert.Matches("^(Microsoft.Extensions.Configuration|System.IO.Hashing)", needed.Attribute("id")!.Value));
    }

    [Fact]
    public void Its_symbols_are_a_package_of_their_own()
    {
        using var package = ZipFile.OpenRead(Path.Combine(Bench.Feed, $"Cartwright.{Bench.Version}.snupkg"));
        Assert.Contains(package.Entries, static entry => entry.FullName == "lib/net10.0/Cartwright.pdb" && entry.Length > 0);
    }

    [Fact]
    public void A_program_that_uses_it_builds_a_cart()
    {
        using var bench = new Bench();
        var manifest = bench.CopyCart("lantern-tide-md", "game");
        bench.Write("bench.csproj", $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>net10.0</TargetFramework>
                <ImplicitUsings>enable</ImplicitUsings>
                <TreatWarningsAsErrors>true</TreatWarningsAsErrors>
              </PropertyGroup>
              <ItemGroup><PackageReference Include="Cartwright" Version="{Bench.Version}" /></ItemGroup>
            </Project>
            """);
        bench.Write("Program.cs", """
            using Cartwright;

            var build = CartBuilder.Default.Build(new BuildRequest(args[0]));
            CartOutput.Write(build);
            Console.WriteLine($"{build.Platform!.Facts.Id}: {build.Chips.Length} chips, library {LibraryVersion.Text}");
            """);
        Assert.Equal($"md: 2 chips, library {Bench.Version}\n", bench.Succeed("run", "--", manifest));
        OwnBuild.Equal(manifest, bench.At("game", "dist"));
    }
}
