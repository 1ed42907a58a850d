using System.CommandLine;
using System.CommandLine.Parsing;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>What the verbs that read a manifest have in common: the manifest, and what is laid over it.</summary>
internal static class ManifestInput
{
    public static Argument<string> Argument()
    {
        var manifest = new Argument<string>("manifest") { Description = "The manifest, or its folder.", DefaultValueFactory = static _ => "cart.json" };
        manifest.Validators.Add(static result => RefuseEmpty(result, "name the cart.json to build, or its folder; an empty name is neither."));
        return manifest;
    }

    public static Option<string[]> SetOption()
    {
        var set = new Option<string[]>("--set") { Description = "Overrides a key of the manifest: --set cart:revision=2. May be given several times.", HelpName = "key=value", AllowMultipleArgumentsPerToken = false };
        set.Validators.Add(static result =>
        {
            foreach (var word in result.Tokens.Where(static token => ManifestOverrides.Setting(token.Value) is null))
            {
                result.AddError($"--set takes key=value, not `{word.Value}`; for example --set cart:revision=2.");
            }
        });
        return set;
    }

    public static void RefuseEmpty(SymbolResult result, string problem)
    {
        if (result.Tokens.Any(static token => token.Value.Length == 0))
        {
            result.AddError(problem);
        }
    }

    public static ManifestOverrides Overrides(string[] settings) =>
        ManifestOverrides.Of(Environment.GetEnvironmentVariables(), settings.Select(ManifestOverrides.Setting).OfType<KeyValuePair<string, string>>());

    /// <summary>The manifest the user names, or the one in the folder.</summary>
    public static string Path(string path) => Directory.Exists(path) ? System.IO.Path.Combine(path, "cart.json") : path;
}
