using System.CommandLine;
using System.Text;
using Cartwright.Findings;
using Cartwright.Sheets;

namespace Cartwright.Cli;

/// <summary><c>cartwright sheet</c></summary>
internal static class SheetVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var manifest = ManifestInput.Argument();
        var set = ManifestInput.SetOption();
        var to = new Option<string?>("--out") { Description = "The new file; NAME.sheet.html beside the manifest when absent.", HelpName = "file" };
        var verb = new Verb("sheet", "Makes a page for the workbench: chips, files, checksums, cautions, and what to tick.", "cartwright sheet", "cartwright sheet examples/lantern-tide-md --out lantern-tide.html") { manifest, set, to };
        verb.SetAction(parsed => Run(ManifestInput.Path(parsed.GetRequiredValue(manifest)), parsed.GetValue(set) ?? [], parsed.GetValue(to), output, errors));
        return verb;
    }

    private static int Run(string manifest, string[] settings, string? to, TextWriter output, TextWriter errors)
    {
        var build = CartBuilder.Default.Build(new BuildRequest(manifest) { Overrides = ManifestInput.Overrides(settings) });
        var log = new FindingLog();
        var written = build.HasErrors ? null : Write(build, Path.GetFullPath(to ?? Path.Combine(Path.GetDirectoryName(Path.GetFullPath(manifest))!, build.Manifest!.Cart.Name.Text + ".sheet.html")), log);
        ImageInput.WriteFindings(errors, [.. build.Findings, .. log.ToSorted()]);
        if (written is null)
        {
            errors.WriteLine("cartwright: nothing was written.");
            return ExitCode.Refused;
        }

        output.WriteLine($"Written {written}");
        return ExitCode.Done;
    }

    private static string? Write(CartBuild build, string path, FindingLog log) =>
        NewFile.Write(path, Encoding.UTF8.GetBytes(BenchSheet.Write(build, CartOutput.Write(build, dryRun: true).Files)), log);
}
