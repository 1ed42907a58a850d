using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;

namespace Cartwright.Production;

/// <summary>Makes the units of a run out of one build. Units and ledger go into the folder together, some at a time, so that a run that is stopped has given just the numbers its ledger names.</summary>
/// <param name="common">The build all units share, without errors.</param>
/// <param name="request">What is asked for.</param>
public sealed class ProductionRun(CartBuild common, RunRequest request)
{
    // So many units are lost at most when a run is stopped.
    private const int Together = 16;

    private readonly CartManifest _manifest = common.Manifest!;

    private string Stem => _manifest.Cart.Name.Text;

    /// <summary>Makes the units.</summary>
    /// <param name="log">Receives what is wrong; with an error before the first unit nothing is written.</param>
    /// <returns>The units that were made.</returns>
    public ImmutableArray<LedgerEntry> Make(FindingLog log)
    {
        var fields = _manifest.Run.Fields;
        new RunChecks(_manifest.Run, common.Cart!, log).Check();
        var values = new UnitValues(Stem, fields);
        ImmutableArray<(RunUnit Unit, ImmutableArray<byte[]> Values)> units = [.. request.Units.Select(unit => (unit, values.Of(unit, log)))];
        if (units.IsEmpty)
        {
            log.Add(RunFindings.NoUnits, request.Place, "No unit is asked for.");
        }

        if (log.HasErrors)
        {
            return [];
        }

        using var folder = OutputFolder.Open(request.Folder, request.Place, log);
        var ledger = folder is null ? null : RunLedger.Read(Path.Combine(request.Folder, LedgerName("json")), log);
        return ledger is { } entries && AreFree(entries, log) ? Make(folder!, units, entries, log) : [];
    }

    private string LedgerName(string ending) => $"{Stem}.ledger.{ending}";

    private bool AreFree(ImmutableArray<LedgerEntry> ledger, FindingLog log)
    {
        var given = ledger.Select(static entry => entry.Serial).ToHashSet();
        var next = given.DefaultIfEmpty(-1).Max() + 1;
        var twice = request.Units.Select(static unit => unit.Serial).Where(serial => !given.Add(serial)).Distinct().ToList();
        if (twice.Count > 0)
        {
            var others = twice.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $" (and {twice.Count - 1} more)") : "";
            log.Add(RunFindings.SerialGiven, new SourcePlace(Path.Combine(request.Folder, LedgerName("json"))),
                string.Create(CultureInfo.InvariantCulture, $"The serial number {twice[0]}{others} would be given a second time."),
                string.Create(CultureInfo.InvariantCulture, $"numbers that are not in the ledger; {Math.Max(next, request.Units.Max(static unit => unit.Serial) + 1)} and above are free"));
        }

        return twice.Count == 0;
    }

    private ImmutableArray<LedgerEntry> Make(OutputFolder folder, ImmutableArray<(RunUnit Unit, ImmutableArray<byte[]> Values)> units, ImmutableArray<LedgerEntry> ledger, FindingLog log)
    {
        var cart = new UnitCart(common.Cart!, _manifest.Run.Fields);
        var files = new UnitFiles(common, cart, request.OnlySectors);
        var digest = common.Files.First(static file => file.Kind == OutputKind.Rom).Digest().Sha256;
        var made = ImmutableArray.CreateBuilder<LedgerEntry>(units.Length);
        try
        {
            foreach (var batch in units.Chunk(Together))
            {
                foreach (var file in made.Count == 0 && request.OnlySectors ? common.Files.Where(static file => file.Format == ImageFormat.Raw) : [])
                {
                    folder.Stage(file);
                }

                made.AddRange(batch.Select(unit => Stage(folder, cart, files, unit.Unit, unit.Values, digest)).ToList());
                StageLedger(folder, [.. ledger, .. made]);
                folder.Commit();
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            log.Add(OutputFindings.WriteFailed, request.Place, $"The files could not be written into {request.Folder}: {fault.Message} The ledger names the units that are whole.");
        }

        return made.ToImmutable();
    }

    private LedgerEntry Stage(OutputFolder folder, UnitCart cart, UnitFiles files, RunUnit unit, ImmutableArray<byte[]> values, string digest)
    {
        var fields = _manifest.Run.Fields;
        ImmutableArray<KeyValuePair<string, string>> texts = [.. fields.Select((field, i) => KeyValuePair.Create(field.Name, UnitValues.Text(field, values[i], unit)))];
        var written = ImmutableArray.CreateBuilder<LedgerFile>();
        foreach (var (file, chip, offset) in files.Of(string.Create(CultureInfo.InvariantCulture, $"{Stem}.{unit.Serial:D6}"), cart.With(values)))
        {
            folder.Stage(file);
            var own = file.Digest();
            written.Add(new LedgerFile(file.Name, chip?.Site.Name, offset, own.Crc32Text, own.Sha256));
        }

        var revision = _manifest.Run.BoardRevision?.Text ?? "";
        return new LedgerEntry(unit.Serial, texts, Label(texts, revision), revision, digest, written.ToImmutable());
    }

    private string Label(ImmutableArray<KeyValuePair<string, string>> texts, string revision) =>
        LabelText.Write(_manifest.Run.Label?.Text ?? "", name => name.ToLowerInvariant() switch
        {
            "title" => _manifest.Cart.Title?.Text ?? "",
            "revision" => _manifest.Cart.Revision?.Text ?? "",
            "boardrevision" => revision,
            _ => texts.First(text => string.Equals(text.Key, name, StringComparison.OrdinalIgnoreCase)).Value,
        });

    private void StageLedger(OutputFolder folder, ImmutableArray<LedgerEntry> entries)
    {
        folder.Stage(new OutputFile(LedgerName("json"), OutputKind.Record, ImageFormat.Raw, [RunLedger.WriteJson(entries)]));
        folder.Stage(new OutputFile(LedgerName("csv"), OutputKind.Record, ImageFormat.Raw, [RunLedger.WriteTable(entries)]));
    }
}
