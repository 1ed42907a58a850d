// The project's own build. Run it from the repository's root:
//   dotnet tool restore
//   dotnet cake build.cake-project/build.cake --target=Check
// `--description` lists the targets.

using System.Text.RegularExpressions;

var target = Argument("target", "Check");
var configuration = Argument("configuration", "Release");
var runtime = Argument("runtime", "linux-x64");

var root = MakeAbsolute(Directory("..")) is var above && FileExists(above.CombineWithFilePath("Cartwright.slnx"))
    ? above
    : MakeAbsolute(Directory("."));
var solution = root.CombineWithFilePath("Cartwright.slnx");
var command = root.CombineWithFilePath("src/Cartwright.Cli/Cartwright.Cli.csproj");
var native = root.Combine("artifacts/native");
var packages = root.Combine("artifacts/packages").Combine(configuration.ToLowerInvariant());
var addins = root.Combine("artifacts/addins");
var manifests = $"{root}/examples/*/cart.json";

void Run(FilePath program, params string[] words)
{
    var arguments = words.Aggregate(new ProcessArgumentBuilder(), (list, word) => list.AppendQuoted(word));
    var exit = StartProcess(program, new ProcessSettings { Arguments = arguments, WorkingDirectory = root });
    if (exit != 0)
    {
        throw new CakeException($"{program} {string.Join(' ', words)}: exit code {exit}.");
    }
}

Task("Restore")
    .Description("Restores packages exactly as the lock files say.")
    .Does(() => DotNetRestore(solution.FullPath, new DotNetRestoreSettings { LockedMode = true }));

Task("Format")
    .Description("Fails when a file is not formatted as .editorconfig says.")
    .IsDependentOn("Restore")
    .Does(() => DotNetFormat(solution.FullPath, new DotNetFormatSettings { VerifyNoChanges = true, NoRestore = true }));

Task("Build")
    .Description("Builds everything; a warning is an error.")
    .IsDependentOn("Restore")
    .Does(() => DotNetBuild(solution.FullPath, new DotNetBuildSettings { Configuration = configuration, NoRestore = true }));

Task("Test")
    .Description("Runs every test.")
    .IsDependentOn("Build")
    .Does(() => Run("dotnet", "test", "--solution", solution.FullPath, "--configuration", configuration, "--no-build"));

Task("Docs")
    .Description("Fails when a page links to a file that is not there. What pages say of tables is held by the tests.")
    .DoesForEach(() => GetFiles($"{root}/*.md") + GetFiles($"{root}/docs/**/*.md") + GetFiles($"{root}/{{src,tests,examples,templates}}/*/*.md"), page =>
    {
        var links = Regex.Matches(System.IO.File.ReadAllText(page.FullPath), @"\]\(([^)#\s]+)[^)]*\)").Select(link => link.Groups[1].Value);
        foreach (var link in links.Where(link => !link.Contains(':')))
        {
            var target = page.GetDirectory().CombineWithFilePath(link).FullPath;
            if (!FileExists(target) && !DirectoryExists(target))
            {
                throw new CakeException($"{page}: there is no {link}.");
            }
        }
    })
    .DeferOnError();

Task("Tidy")
    .Description("Format and pages.")
    .IsDependentOn("Format")
    .IsDependentOn("Docs");

Task("Pack")
    .Description("Packs the library, the command, the MSBuild targets and the aliases for Cake.")
    .IsDependentOn("Restore")
    .Does(() =>
    {
        CleanDirectory(packages);
        DotNetPack(solution.FullPath, new DotNetPackSettings { Configuration = configuration, NoRestore = true });
    });

Task("Native")
    .Description("Publishes the command as one native file; a trim or AOT warning is an error.")
    .Does(() => DotNetPublish(command.FullPath, new DotNetPublishSettings
    {
        Configuration = configuration,
        Runtime = runtime,
        OutputDirectory = native,
    }));

Task("NativeExamples")
    .Description("Builds every example cart with the native command.")
    .IsDependentOn("Native")
    .DoesForEach(() => GetFiles(manifests), manifest => Run(native.CombineWithFilePath("cartwright"), "build", manifest.FullPath));

// The aliases come out of the package just packed, so a script of its own loads them, and from a folder that holds no earlier ones.
Task("Examples")
    .Description("Builds every example cart through the packed aliases, which must find just what the native command has made.")
    .IsDependentOn("Pack")
    .IsDependentOn("NativeExamples")
    .Does(() =>
    {
        CleanDirectory(addins);
        Run("dotnet", "cake", $"{root}/build.cake-project/examples.cake", $"--paths_addins={addins}", $"--nuget_source={packages}");
    });

Task("Check")
    .Description("Everything a change must pass.")
    .IsDependentOn("Tidy")
    .IsDependentOn("Test")
    .IsDependentOn("Examples");

RunTarget(target);
