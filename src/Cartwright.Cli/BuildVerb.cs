using System.Collections;
using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright build</c></summary>
internal static class BuildVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var manifest = new Argument<string>("manifest") { Description = "The manifest, or its folder.", DefaultValueFactory = static _ => "cart.json" };
        var set = new Option<string[]>("--set") { Description = "Overrides a key of the manifest: --set cart:revision=2. May be given several times.", HelpName = "key=value", AllowMultipleArgumentsPerToken = false };
        var folder = new Option<string?>("--out") { Description = "Puts the files into this folder instead of the manifest's.", HelpName = "folder" };
        var dryRun = new Option<bool>("--dry-run") { Description = "Does everything but write files." };
        var sarif = new Option<string?>("--sarif") { Description = "Also writes the findings to this file, as SARIF 2.1.0 for a build service.", HelpName = "file" };
        var depfile = new Option<string?>("--depfile") { Description = "Also writes what the build depends on to this file, as a rule for make.", HelpName = "file" };
        var json = Verb.JsonOption();
        set.Validators.Add(static result =>
        {
            foreach (var word in result.Tokens.Where(static token => token.Value.IndexOf('=', StringComparison.Ordinal) <= 0))
            {
                result.AddError($"--set takes key=value, not `{word.Value}`; for example --set cart:revision=2.");
            }
        });
        manifest.Validators.Add(static result => RefuseEmpty(result, "name the cart.json to build, or its folder; an empty name is neither."));
        sarif.Validators.Add(static result => RefuseEmpty(result, "--sarif takes a file; an empty name is none."));
        depfile.Validators.Add(static result => RefuseEmpty(result, "--depfile takes a file; an empty name is none."));
        folder.Validators.Add(static result => RefuseEmpty(result, "--out takes a folder; an empty name is none."));
        var verb = new Verb(
            "build",
            "Builds chip images, ROM file and record from a manifest.",
            "cartwright build",
            "cartwright build examples/lantern-tide-md/cart.json --out /tmp/cart",
            "cartwright build --set cart:revision=2 --set images:wordOrder=programmer",
            "cartwright build --depfile cart.d --sarif findings.sarif")
        {
            manifest, set, folder, dryRun, sarif, depfile, json,
        };
        verb.SetAction(parsed =>
        {
            LoadCrypto();
            var request = new BuildRequest(ManifestPath(parsed.GetRequiredValue(manifest)))
            {
                Overrides = new ManifestOverrides(Variables(), Settings(parsed.GetValue(set) ?? [])),
                OutputFolder = parsed.GetValue(folder),
            };
            return Run(request, parsed.GetValue(dryRun), new BuildLogs(parsed.GetValue(sarif), parsed.GetValue(depfile)), parsed.GetValue(json), output, errors);
        });
        return verb;
    }

    private static void RefuseEmpty(SymbolResult result, string problem)
    {
        if (result.Tokens.Any(static token => token.Value.Length == 0))
        {
            result.AddError(problem);
        }
    }

    // The first digest loads the system's crypto library, a third of a small build's time; it loads while the manifest is read.
    private static void LoadCrypto() => new Thread(static () => FileDigest.Of([])) { IsBackground = true }.Start();

    private static int Run(BuildRequest request, bool dryRun, BuildLogs logs, bool json, TextWriter output, TextWriter errors)
    {
        var build = CartBuilder.Default.Build(request);
        var result = build.HasErrors ? null : CartOutput.Write(build, dryRun);
        var findings = logs.Write(build, result, build.Findings.AddRange(result?.Findings ?? []));
        var failed = findings.Any(static finding => finding.Severity == FindingSeverity.Error);
        if (json)
        {
            BuildReport.WriteJson(output, build, result, findings, dryRun);
        }
        else
        {
            foreach (var finding in findings)
            {
                errors.WriteLine(FindingText.Line(finding));
            }

            if (result is not null && !failed)
            {
                BuildReport.WriteText(output, build, result, dryRun);
            }
            else
            {
                errors.WriteLine("cartwright: nothing was written.");
            }
        }

        return failed ? ExitCode.Refused : ExitCode.Done;
    }

    private static string ManifestPath(string path) => Directory.Exists(path) ? Path.Combine(path, "cart.json") : path;

    private static ImmutableSortedDictionary<string, string> Settings(string[] words)
    {
        var settings = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var word in words)
        {
            var equals = word.IndexOf('=', StringComparison.Ordinal);
            settings[word[..equals].Trim()] = word[(equals + 1)..];
        }

        return settings.ToImmutable();
    }

    private static ImmutableSortedDictionary<string, string> Variables()
    {
        var variables = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (DictionaryEntry variable in Environment.GetEnvironmentVariables())
        {
            if (variable is { Key: string name, Value: string value } && name.StartsWith(ManifestDocument.EnvironmentPrefix, StringComparison.OrdinalIgnoreCase))
            {
                variables[name] = value;
            }
        }

        return variables.ToImmutable();
    }
}
