using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;
using Cartwright.Tests.Documents;
using Xunit;

namespace Cartwright.Tests.Builds;

/// <summary>Each fault a manifest can have, from the manifest's text to the finding.</summary>
public sealed class BuildFaultTests
{
    private const string Board = "\"board\": { \"sites\": [ ";

    private static readonly (FindingRule Rule, string Manifest)[] Faults =
    [
        (ManifestFindings.BadJson, BuildBench.Manifest("\"rom\": { ")),
        (ManifestFindings.UnknownKey, BuildBench.Manifest("\"imags\": { }, \"imags:folder\": \"out\"")),
        (ManifestFindings.MissingKey, """{ "cart": { "platform": "gb" }, "programs": [ { "file": "main.bin", "offset": 0 } ] }"""),
        (ManifestFindings.WrongType, BuildBench.Manifest("\"rom\": { \"fill\": 256 }")),
        (ManifestFindings.BadValue, BuildBench.Manifest("\"images\": { \"formats\": \"tape\" }")),
        (ManifestFindings.DuplicateKey, BuildBench.Manifest("\"rom\": { \"size\": \"fit\" }, \"Rom\": { \"fill\": 0 }")),
        (ManifestFindings.PathOutside, BuildBench.Manifest("\"images\": { \"folder\": \"../dist\" }")),
        (ManifestFindings.TooLarge, BuildBench.Manifest("") + new string(' ', ManifestDocument.LargestFile)),
        (ManifestFindings.UnknownPlatform, BuildBench.Manifest("", platform: "gameboi")),
        (ManifestFindings.UnsafeName, """{ "cart": { "name": "lantern tide", "platform": "gb" }, "programs": [ { "file": "main.bin", "offset": 0 } ] }"""),
        (RomFindings.Overlap, BuildBench.Manifest("", """{ "file": "main.bin", "offset": 0 }, { "file": "other.bin", "offset": "0x4000" }""")),
        (RomFindings.SameTwice, BuildBench.Manifest("", """{ "file": "main.bin", "offset": 0 }, { "file": "main.bin", "offset": 0 }""")),
        (RomFindings.TooSmall, BuildBench.Manifest("\"rom\": { \"size\": \"32KiB\" }", """{ "file": "large.bin", "offset": 0 }""")),
        (RomFindings.IllegalSize, BuildBench.Manifest("\"rom\": { \"size\": \"40KiB\" }")),
        (RomFindings.TooLarge, BuildBench.Manifest("", """{ "file": "main.bin", "offset": "8MiB" }""")),
        (RomFindings.NotInRom, BuildBench.Manifest("", """{ "file": "main.bin", "address": "$C000" }""")),
        (RomFindings.BadAddress, BuildBench.Manifest("", """{ "file": "main.bin", "offset": "start" }""")),
        (RomFindings.BadRegion, BuildBench.Manifest("", """{ "file": "main.bin", "region": "chr", "offset": 0 }""")),
        (RomFindings.EmptyRegion, BuildBench.Manifest("\"header\": { \"mapper\": \"nrom\" }", """{ "file": "chr.bin", "region": "chr", "offset": 0 }""", "nes")),
        (RomFindings.NoPlace, BuildBench.Manifest("", """{ "file": "main.bin" }""")),
        (RomFindings.SliceOutside, BuildBench.Manifest("", """{ "file": "main.bin", "offset": 0, "skip": "1MiB" }""")),
        (RomFindings.Reordered, BuildBench.Manifest("", """{ "file": "swapped.bin", "offset": 0 }""", "sample")),
        (RomFindings.UnevenOrder, BuildBench.Manifest("", """{ "file": "main.bin", "offset": 0, "length": 3, "order": "byte-swapped" }""")),
        (HeaderFindings.UnknownField, BuildBench.Manifest("\"header\": { \"colour\": \"red\" }")),
        (HeaderFindings.MissingField, BuildBench.Manifest("", """{ "file": "main.bin", "region": "prg", "offset": 0 }""", "nes")),
        (HeaderFindings.NoRoom, BuildBench.Manifest("\"header\": { \"wiring\": \"high\" }", platform: "sample")),
        (BoardFindings.Unknown, BuildBench.Manifest("\"board\": { \"use\": \"gb-tripple\" }")),
        (BoardFindings.None, BuildBench.Manifest("")),
        (BoardFindings.Contradiction, BuildBench.Manifest("\"board\": { \"busWidth\": 12, \"sites\": [ { \"site\": \"U1\" } ] }")),
        (BoardFindings.OtherPlatform, BuildBench.Manifest("\"board\": { \"use\": \"md-single-16bit\" }")),
        (BoardFindings.RomTooLarge, BuildBench.Manifest(Board + "{ \"site\": \"U1\", \"length\": \"16KiB\" } ] }")),
        (BoardFindings.RegionWithoutSite, BuildBench.Manifest(Board + "{ \"site\": \"U1\", \"region\": \"chr\" } ] }")),
        (BoardFindings.Unused, BuildBench.Manifest(Board + "{ \"site\": \"U1\", \"length\": \"1MiB\" }, { \"site\": \"U2\", \"start\": \"1MiB\" } ] }")),
        (BoardFindings.NotWiredFor, BuildBench.Manifest("\"board\": { \"sites\": [ { \"site\": \"U1\" } ], \"expects\": { \"cartridgeType\": \"mbc5\" } }")),
        (BoardFindings.UnknownSite, BuildBench.Manifest("\"board\": { \"use\": \"gb-single-8bit\", \"chips\": { \"U9\": { \"part\": \"SST39SF040\" } } }")),
        (BoardFindings.NoPart, BuildBench.Manifest("\"board\": { \"use\": \"gb-single-8bit\" }")),
        (BoardFindings.LargerThanSite, BuildBench.Manifest(Board + "{ \"site\": \"U1\", \"largest\": \"64KiB\" } ], \"chips\": { \"U1\": { \"part\": \"SST39SF040\" } } }")),
        (BoardFindings.OwnPart, BuildBench.Manifest("\"board\": { \"use\": \"gb-single-8bit\", \"chips\": { \"U1\": { \"part\": \"MYSTERY1\", \"capacity\": \"64KiB\" } } }")),
    ];

    public static TheoryData<string> Codes => [.. Faults.Select(fault => fault.Rule.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_fault_is_found(string code)
    {
        var (rule, manifest) = Faults.Single(fault => fault.Rule.Code == code);
        using var bench = new BuildBench(manifest);
        var build = bench.Build(PlatformCatalog.BuiltIn.With(new SamplePlatform()));
        Assert.Contains(build.Findings, finding => finding.Rule == rule);
        Assert.True(build.HasErrors || rule.Severity != FindingSeverity.Error);
        Assert.All(build.Findings, finding => Assert.NotNull(finding.Place.File));
    }

    [Fact]
    public void A_manifest_that_is_not_there_is_told()
    {
        using var bench = new BuildBench("");
        var build = CartBuilder.Default.Build(new BuildRequest(Path.Combine(bench.Folder, "no.json")));
        Assert.Equal(ManifestFindings.Missing, Assert.Single(build.Findings).Rule);
    }

    [Fact]
    public void A_cart_without_a_fault_has_none_of_these_findings()
    {
        using var bench = new BuildBench(BuildBench.Manifest("\"board\": { \"use\": \"gb-single-8bit\", \"chips\": { \"U1\": { \"part\": \"SST39SF040\" } } }"));
        Assert.Empty(bench.Build().Findings.Where(finding => Faults.Any(fault => fault.Rule == finding.Rule)).Select(finding => finding.Message));
    }
}
