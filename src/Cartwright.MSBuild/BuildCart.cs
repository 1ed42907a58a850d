using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Microsoft.Build.Framework;
using Task = Microsoft.Build.Utilities.Task;

namespace Cartwright.MSBuild;

/// <summary>Builds one cart, and reports its findings as errors, warnings and messages.</summary>
public sealed class BuildCart : Task
{
    /// <summary>The manifest, a full path.</summary>
    [Required]
    public string Manifest { get; set; } = "";

    /// <summary>Output folder in place of the manifest's; empty for that.</summary>
    public string OutputFolder { get; set; } = "";

    /// <summary>Values laid over the manifest, `key=value`, parted by semicolons.</summary>
    public string Settings { get; set; } = "";

    /// <summary>Folder for what is kept from one build to the next.</summary>
    [Required]
    public string StateFolder { get; set; } = "";

    /// <inheritdoc/>
    public override bool Execute()
    {
        var words = CartSettings.Words(Settings);
        foreach (var word in words.Where(static word => ManifestOverrides.Setting(word) is null))
        {
            Log.LogError(null, null, null, Manifest, 0, 0, 0, 0, "Settings takes key=value, not `{0}`; for example cart:revision=2.", word);
        }

        return !Log.HasLoggedErrors && Build(CartSettings.Overrides(words));
    }

    private bool Build(ManifestOverrides overrides)
    {
        var build = CartBuilder.Default.Build(new BuildRequest(Manifest) { Overrides = overrides, OutputFolder = OutputFolder });
        Report(build.Findings);
        if (build.HasErrors)
        {
            return false;
        }

        var result = CartOutput.Write(build);
        Report(result.Findings);
        if (!Log.HasLoggedErrors)
        {
            Keep(build, result);
        }

        return !Log.HasLoggedErrors;
    }

    private void Report(ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings)
        {
            Report(finding);
        }
    }

    private void Report(Finding finding)
    {
        var (file, line, column) = (FullPath(finding.Place.File), finding.Place.Line, finding.Place.Column);
        var text = Words(finding);
        switch (finding.Severity)
        {
            case FindingSeverity.Error:
                Log.LogError(null, finding.Code, null, file, line, column, 0, 0, "{0}", text);
                break;
            case FindingSeverity.Warning:
                Log.LogWarning(null, finding.Code, null, file, line, column, 0, 0, "{0}", text);
                break;
            default:
                Log.LogMessage(null, finding.Code, null, file, line, column, 0, 0, MessageImportance.Normal, "{0}", text);
                break;
        }
    }

    // MSBuild has no byte offsets, so they stand in the words.
    private static string Words(Finding finding) =>
        finding.Place is { Line: 0, Offset: { } offset } ? string.Create(CultureInfo.InvariantCulture, $"At 0x{offset:X6}: {FindingText.Words(finding)}") : FindingText.Words(finding);

    // A program is named as the manifest names it, from the manifest's folder.
    private string FullPath(string? file) =>
        Path.Combine(Path.GetDirectoryName(Manifest)!, file ?? Manifest) is var path && File.Exists(path) ? Path.GetFullPath(path) : Manifest;

    private void Keep(CartBuild build, CartOutputResult result)
    {
        var home = Path.GetDirectoryName(Manifest)!;
        new CartState(StateFolder, Manifest, OutputFolder, Settings).Keep(
            build.Manifest!.Programs.Select(program => Path.GetFullPath(Path.Combine(home, program.File.Text))),
            result.Files.Select(file => Path.Combine(build.OutputFolder, file.File.Name)));
        Log.LogMessage(MessageImportance.High, "{0} -> {1}{2}", build.Manifest.Cart.Name.Text, build.OutputFolder, result.WasThere ? " (as it was)" : "");
    }
}
