using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Images;

namespace Cartwright.Cli;

/// <summary><c>cartwright build</c></summary>
internal static class BuildVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var manifest = ManifestInput.Argument();
        var set = ManifestInput.SetOption();
        var folder = new Option<string?>("--out") { Description = "Puts the files into this folder instead of the manifest's.", HelpName = "folder" };
        var dryRun = new Option<bool>("--dry-run") { Description = "Does everything but write files." };
        var sarif = new Option<string?>("--sarif") { Description = "Also writes the findings to this file, as SARIF 2.1.0 for a build service.", HelpName = "file" };
        var depfile = new Option<string?>("--depfile") { Description = "Also writes what the build depends on to this file, as a rule for make.", HelpName = "file" };
        var json = Verb.JsonOption();
        sarif.Validators.Add(static result => ManifestInput.RefuseEmpty(result, "--sarif takes a file; an empty name is none."));
        depfile.Validators.Add(static result => ManifestInput.RefuseEmpty(result, "--depfile takes a file; an empty name is none."));
        folder.Validators.Add(static result => ManifestInput.RefuseEmpty(result, "--out takes a folder; an empty name is none."));
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
            var request = new BuildRequest(ManifestInput.Path(parsed.GetRequiredValue(manifest)))
            {
                Overrides = ManifestInput.Overrides(parsed.GetValue(set) ?? []),
                OutputFolder = parsed.GetValue(folder),
            };
            return Run(request, parsed.GetValue(dryRun), new BuildLogs(parsed.GetValue(sarif), parsed.GetValue(depfile)), parsed.GetValue(json), output, errors);
        });
        return verb;
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
}
