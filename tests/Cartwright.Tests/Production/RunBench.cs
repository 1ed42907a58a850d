using Cartwright.Findings;
using Cartwright.Production;
using Cartwright.Tests.Oracles;

namespace Cartwright.Tests.Production;

/// <summary>A cart with two 8-bit chips on a 16-bit bus, and runs of it.</summary>
internal sealed class RunBench : IDisposable
{
    public const string Serial = """{ "name": "serial", "kind": "serial", "offset": "0x1000", "width": 6 }""";
    public const string Number = """{ "name": "count", "kind": "serial", "form": "binary", "offset": "0x1008", "width": 2 }""";

    private readonly TempFolder _folder = new();

    public RunBench(string fields = Serial, string members = "", string more = "")
    {
        var header = new byte[0x206];
        header[1] = 0xFF;
        header[6] = 0x02;
        "SEGA MEGA DRIVE "u8.CopyTo(header.AsSpan(0x100));
        File.WriteAllBytes(In("main.bin"), header);
        File.WriteAllText(In("cart.json"), $$"""
            { "cart": { "name": "tide", "platform": "md", "title": "TIDE", "revision": 3 },
              "programs": [ { "file": "main.bin", "offset": "0" } {{more}} ], "rom": { "size": "128KiB" },
              "board": { "use": "md-double-8bit", "chips": { "U1": { "part": "SST39SF010A" }, "U2": { "part": "SST39SF010A" } } },
              "run": { "fields": [ {{fields}} ] {{members}} } }
            """);
    }

    public string Folder => In("run");

    public string In(string name) => Path.Combine(_folder.Path, name);

    public byte[] Read(string name) => File.ReadAllBytes(Path.Combine(Folder, name));

    public CartBuild Build() => CartBuilder.Default.Build(new BuildRequest(In("cart.json")));

    public string[] Run(long first, int units, bool onlySectors = false) => Run([.. Enumerable.Range(0, units).Select(unit => RunUnit.Numbered(first + unit))], onlySectors);

    public string[] Run(RunUnit[] units, bool onlySectors = false)
    {
        var log = new FindingLog();
        new ProductionRun(Build(), new RunRequest(Folder, SourcePlace.None, [.. units]) { OnlySectors = onlySectors }).Make(log);
        return [.. log.ToSorted().Where(finding => finding.Severity == FindingSeverity.Error).Select(finding => finding.Code)];
    }

    public long[] Given() => [.. RunLedger.Read(Path.Combine(Folder, "tide.ledger.json"), new FindingLog())!.Value.Select(entry => entry.Serial)];

    public void Dispose() => _folder.Dispose();
}
