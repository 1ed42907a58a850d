using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Xunit;

namespace Cartwright.Tests;

/// <summary>Who may use whom, and what public types look like.</summary>
public sealed partial class ArchitectureTests
{
    // Each folder of the library and the folders it may use. The files beside the folders are the line that joins them, and may use all.
    private static readonly SortedDictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Documents"] = ["Boards", "Chips", "Findings", "Headers", "Manifests", "Platforms", "Roms", "TestImages"],
        ["Findings"] = [],
        ["Ordering"] = [],
        ["Checksums"] = [],
        ["Patching"] = ["Checksums", "Findings", "Ordering"],
        ["Programs"] = ["Findings"],
        ["Manifests"] = ["Findings", "Ordering", "Programs"],
        ["Chips"] = ["Findings", "Manifests"],
        ["Plans"] = ["Chips", "Findings", "Manifests"],
        ["Roms"] = ["Findings", "Manifests", "Programs"],
        ["Headers"] = ["Findings", "Manifests", "Roms"],
        ["Inspection"] = ["Findings", "Headers", "Manifests", "Ordering", "Patching", "Platforms", "Roms"],
        ["Platforms"] = ["Checksums", "Findings", "Headers", "Manifests", "Ordering", "Roms"],
        ["Boards"] = ["Findings", "Headers", "Manifests", "Ordering"],
        ["Slots"] = ["Findings", "Images", "Manifests", "Platforms", "Programs", "Roms"],
        ["Sheets"] = ["Boards", "Findings", "Images", "Manifests", "Slots"],
        ["Production"] = ["Boards", "Chips", "Findings", "Headers", "Images", "Manifests", "Plans", "Platforms", "Roms"],
        ["Proofs"] = ["Boards", "Chips", "Findings", "Headers", "Images", "Manifests", "Ordering", "ReadBacks"],
        ["ReadBacks"] = ["Ordering"],
        ["Saves"] = ["Findings", "Manifests", "Ordering", "Production"],
        ["TestImages"] = ["Boards", "Findings", "Headers", "Images", "Manifests", "Ordering", "Platforms", "ReadBacks", "Roms"],
        ["Images"] = ["Boards", "Checksums", "Chips", "Findings", "Headers", "Manifests", "Ordering", "Roms"],
    };

    private static string Source => Path.Combine(Approved.RepositoryRoot(), "src", "Cartwright");

    [Fact]
    public void Every_folder_has_a_row_in_the_table() =>
        Assert.Equal(Allowed.Keys, Directory.GetDirectories(Source).Select(folder => Path.GetFileName(folder)).Except(["bin", "obj"]).Order(StringComparer.Ordinal));

    [Fact]
    public void A_folder_uses_only_what_its_row_allows() =>
        Assert.Empty(
            from file in Files()
            let folder = FolderOf(file)
            where folder.Length > 0
            from used in Uses(file)
            where used != folder && !Allowed[folder].Contains(used)
            select $"{Path.GetRelativePath(Source, file)} uses {used}");

    [Fact]
    public void No_row_allows_more_than_is_used() =>
        Assert.Empty(
            from row in Allowed
            where row.Key != "Platforms"
            let used = Files().Where(file => FolderOf(file) == row.Key).SelectMany(Uses).ToHashSet(StringComparer.Ordinal)
            from name in row.Value
            where !used.Contains(name)
            select $"{row.Key} does not use {name}");

    [Fact]
    public void The_table_has_no_circles()
    {
        var settled = new HashSet<string>(StringComparer.Ordinal);
        while (Allowed.FirstOrDefault(row => !settled.Contains(row.Key) && row.Value.All(settled.Contains)) is { Key: { } next }) settled.Add(next);
        Assert.Equal(Allowed.Keys, settled.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_platform_uses_no_other_platform() =>
        Assert.Empty(
            from file in Files()
            let path = Path.GetRelativePath(Source, file).Split(Path.DirectorySeparatorChar)
            where path.Length > 2 && path[0] == "Platforms"
            from Match match in OtherPlatform().Matches(File.ReadAllText(file))
            where match.Groups[1].Value != path[1]
            select $"{string.Join('/', path)} uses {match.Groups[1].Value}");

    [Fact]
    public void Every_file_holds_one_type_of_its_own_name() =>
        Assert.Empty(
            from file in Files()
            let types = TopLevelType().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value).ToList()
            let name = Path.GetFileName(file).Split('.')[0]
            where types.Count != 1 || types[0] != name
            select $"{Path.GetRelativePath(Source, file)} holds {string.Join(", ", types)}");

    [Fact]
    public void Public_types_do_not_change()
    {
        var types = typeof(CartBuilder).Assembly.GetExportedTypes();
        const BindingFlags Everywhere = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        Assert.True(types.Length > 80);
        Assert.Empty(
            from type in types
            from property in type.GetProperties(Everywhere)
            where property.SetMethod is { IsPublic: true } setter && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
            select $"{type.Name}.{property.Name} can be set");
        Assert.Empty(
            from type in types
            from field in type.GetFields(Everywhere)
            where !field.IsInitOnly && !field.IsLiteral && !field.IsSpecialName
            select $"{type.Name}.{field.Name} can be set");
    }

    private static IEnumerable<string> Files() =>
        Directory.EnumerateFiles(Source, "*.cs", SearchOption.AllDirectories)
            .Where(file => FolderOf(file) is not ("bin" or "obj"))
            .Order(StringComparer.Ordinal);

    private static string FolderOf(string file) => Path.GetRelativePath(Source, file).Split(Path.DirectorySeparatorChar) is [var folder, _, ..] ? folder : "";

    private static IEnumerable<string> Uses(string file) =>
        File.ReadLines(file)
            .Where(line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal) && !line.StartsWith("namespace", StringComparison.Ordinal))
            .SelectMany(line => Qualified().Matches(line).Select(match => match.Groups[1].Value))
            .Where(Allowed.ContainsKey)
            .Distinct();

    // `using Cartwright.Roms;`, and `Roms.Rom` where the name is not itself a member of something.
    [GeneratedRegex(@"(?:\bCartwright\.|(?<![.\w`/""]))([A-Z][a-z]+s|Ordering|Patching|Production|ReadBacks|TestImages)(?:;|\.[A-Z])")]
    private static partial Regex Qualified();

    [GeneratedRegex(@"using Cartwright\.Platforms\.(\w+)")]
    private static partial Regex OtherPlatform();

    [GeneratedRegex(@"^(?:public|internal) (?:static |sealed |abstract |readonly |partial |ref )*(?:class|record struct|record|struct|interface|enum|delegate [\w<>?\[\]]+) (\w+)", RegexOptions.Multiline)]
    private static partial Regex TopLevelType();
}
