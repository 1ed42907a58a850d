// The project's own build. Run it from the repository's root:
//   dotnet tool restore
//   dotnet cake build.cake-project/build.cake --target=Check

var target = Argument("target", "Check");
var configuration = Argument("configuration", "Release");
var runtime = Argument("runtime", "linux-x64");

var root = MakeAbsolute(Directory("..")) is var above && FileExists(above.CombineWithFilePath("Cartwright.slnx"))
    ? above
    : MakeAbsolute(Directory("."));
var solution = root.CombineWithFilePath("Cartwright.slnx");
var command = root.CombineWithFilePath("src/Cartwright.Cli/Cartwright.Cli.csproj");
var native = root.Combine("artifacts/native");

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
    .Does(() => DotNetTool($"test --solution {solution.FullPath} --configuration {configuration} --no-build"));

Task("Native")
    .Description("Publishes the command as one native file; a trim or AOT warning is an error.")
    .Does(() => DotNetPublish(command.FullPath, new DotNetPublishSettings
    {
        Configuration = configuration,
        Runtime = runtime,
        OutputDirectory = native,
    }));

Task("Examples")
    .Description("Builds every example cart with the native command.")
    .IsDependentOn("Native")
    .DoesForEach(() => GetFiles($"{root}/examples/*/cart.json"), manifest =>
    {
        var exit = StartProcess(native.CombineWithFilePath("cartwright"), new ProcessSettings
        {
            Arguments = new ProcessArgumentBuilder().Append("build").AppendQuoted(manifest.FullPath),
        });
        if (exit != 0)
        {
            throw new CakeException($"{manifest} did not build: exit code {exit}.");
        }
    });

Task("Check")
    .Description("Everything a change must pass.")
    .IsDependentOn("Format")
    .IsDependentOn("Test")
    .IsDependentOn("Examples");

RunTarget(target);
