using System.Collections.Immutable;
using System.Text;
using Cartwright.Findings;
using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Tests.Manifests;

/// <summary>What the reader made of a manifest, and small helpers to ask for it.</summary>
/// <param name="Manifest">The result; null when it could not be read.</param>
/// <param name="Findings">What was said.</param>
internal sealed record ManifestText(CartManifest? Manifest, ImmutableArray<Finding> Findings)
{
    /// <summary>A manifest without a fault, to begin with.</summary>
    public const string Good = """{ "cart": { "name": "lantern-tide", "platform": "bench" }, "programs": [ { "file": "main.bin", "offset": "0" } ] }""";

    /// <summary>"code line,column" of each finding.</summary>
    public IEnumerable<string> Places => Findings.Select(finding => $"{finding.Code} {finding.Place.Line},{finding.Place.Column}");

    public static ManifestText Of(byte[] text, ManifestOverrides? overrides = null)
    {
        var log = new FindingLog();
        var manifest = ManifestReader.Read("cart.json", text, overrides ?? ManifestOverrides.None, log);
        Assert.True(manifest is not null || log.HasErrors);
        return new ManifestText(manifest, log.ToSorted());
    }

    public static ManifestText Of(string text, ManifestOverrides? overrides = null) => Of(Encoding.UTF8.GetBytes(text), overrides);

    /// <summary>A good manifest with one more top-level key.</summary>
    public static ManifestText With(string members, ManifestOverrides? overrides = null) => Of(Good[..^1] + ", " + members + "}", overrides);

    /// <summary>A manifest that has to be read without a word.</summary>
    public static CartManifest Clean(string text, ManifestOverrides? overrides = null)
    {
        var read = Of(text, overrides);
        Assert.Empty(read.Findings.Select(finding => $"{finding.Code} {finding.Message}"));
        return read.Manifest!;
    }

    /// <summary>Settings as <c>--set</c> gives them.</summary>
    public static ManifestOverrides Set(params (string Key, string Value)[] settings) =>
        ManifestOverrides.None with { Settings = ManifestOverrides.None.Settings.AddRange(settings.Select(pair => KeyValuePair.Create(pair.Key, pair.Value))) };

    /// <summary>Environment variables.</summary>
    public static ManifestOverrides Environment(params (string Name, string Value)[] variables) =>
        ManifestOverrides.None with { Environment = ManifestOverrides.None.Environment.AddRange(variables.Select(pair => KeyValuePair.Create(pair.Name, pair.Value))) };
}
