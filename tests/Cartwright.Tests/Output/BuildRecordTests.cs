using System.Buffers.Binary;
using System.Text.Json;
using Cartwright.Tests.Manifests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Output;

public sealed class BuildRecordTests
{
    private const string Board = "\"board\": { \"use\": \"md-double-8bit\", \"chips\": { \"U1\": { \"part\": \"M27C64A\" } } }";
    private const string Own = "\"board\": { \"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"lane\": \"high\" }, { \"site\": \"U2\", \"lane\": \"low\" } ], \"chips\": { \"U1\": { \"part\": \"M27C64A\" } } }, \"images\": { \"formats\": [ \"raw\", \"s-record\" ] }";

    [Fact]
    public void The_record_lists_every_file_with_the_digests_other_tools_compute()
    {
        using var bench = new CartBench(Own);
        bench.Succeed();
        using var record = Record(bench);
        var files = record.RootElement.GetProperty("files").EnumerateArray().ToList();
        Assert.Equal(bench.Tree().Keys.Where(name => !name.EndsWith("record.json", StringComparison.Ordinal)), files.Select(Name).Order(StringComparer.Ordinal));
        foreach (var file in files) CheckDigest(bench, "dist/" + Name(file), file);
        var inputs = record.RootElement.GetProperty("inputs").EnumerateArray().ToList();
        Assert.Equal([("cart.json", "manifest"), ("main.bin", "raw")], inputs.Select(input => (Name(input), input.GetProperty("format").GetString())));
        foreach (var input in inputs) CheckDigest(bench, Name(input), input);
    }

    [Fact]
    public void The_record_says_what_was_built()
    {
        using var bench = new CartBench(Own, cart: ", \"revision\": 3");
        bench.Succeed(ManifestText.Environment(("CARTWRIGHT__header__speed", "fast")) with { Settings = ManifestText.Set(("cart:revision", "4")).Settings });
        using var record = Record(bench);
        var root = record.RootElement;
        Assert.Equal(("lantern-tide", "bench", "4"), (Text(root, "cart", "name"), Text(root, "cart", "platform"), Text(root, "cart", "revision")));
        Assert.Equal(("fast", "4"), (Text(root, "settings", "header:speed"), Text(root, "settings", "cart:revision")));
        var fields = root.GetProperty("header").EnumerateArray().ToDictionary(field => Text(field, "field"), field => $"{Text(field, "offset")} {Text(field, "bytes")} {Text(field, "value")} {Text(field, "from")}");
        Assert.Equal("0x00001C 04 4 cart", fields["revision"]);
        Assert.Equal("0x00001E 02 512 worked out", fields["romSize"]);
        Assert.Equal(fields["battery"][..11], fields["speed"][..11]);
        Assert.EndsWith(" fast header", fields["speed"], StringComparison.Ordinal);
        var checksum = Assert.Single(root.GetProperty("checksums").EnumerateArray());
        Assert.Equal(Text(checksum, "computed"), Text(checksum, "stored"));
        var chips = root.GetProperty("chips").EnumerateArray().ToList();
        Assert.Equal([("U1", "M27C64A", 8192, 256), ("U2", null, 256, 256)], chips.Select(chip => (Text(chip, "site"), chip.GetProperty("part").GetString(), chip.GetProperty("capacity").GetInt32(), chip.GetProperty("contents").GetInt32())));
        var even = File.ReadAllBytes(bench.In("dist/lantern-tide.U1.bin"));
        Assert.Equal(even[..4].Select(value => $"{value:X2}"), chips[0].GetProperty("firstWords").EnumerateArray().Select(word => word.GetString()));
        Assert.Equal(even[^4..].Select(value => $"{value:X2}"), chips[0].GetProperty("lastWords").EnumerateArray().Select(word => word.GetString()));
        Assert.All(root.GetProperty("findings").EnumerateArray(), finding => Assert.StartsWith("CW", Text(finding, "code"), StringComparison.Ordinal));
    }

    [Fact]
    public void The_record_says_nothing_of_the_machine_it_was_made_on()
    {
        using var outside = new TempFolder();
        outside.Write("main.bin", TestBytes.L(0x10));
        using var bench = new CartBench(programs: $$"""{ "file": "main.bin", "offset": "0x80" }, { "file": "{{outside.Path}}/main.bin", "offset": "0x80" }, { "file": "x", "offset": "0x80" }""");
        bench.Succeed(ManifestText.Set(("programs:2:file", Path.Combine(outside.Path, "main.bin"))));
        using var record = Record(bench);
        var text = record.RootElement.GetRawText();
        Assert.Contains("CW3002", text, StringComparison.Ordinal);
        Assert.Equal(["cart.json", "main.bin", "main.bin"], record.RootElement.GetProperty("inputs").EnumerateArray().Select(Name));
        Assert.DoesNotContain(bench.Path, text, StringComparison.Ordinal);
        Assert.DoesNotContain(outside.Path, text, StringComparison.Ordinal);
        Assert.DoesNotContain(Path.GetTempPath(), text, StringComparison.Ordinal);
        Assert.DoesNotContain(Environment.MachineName, text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain($"{DateTime.UtcNow.Year}-", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_record_ends_its_lines_the_same_way_everywhere()
    {
        using var bench = new CartBench();
        bench.Succeed();
        var text = File.ReadAllBytes(bench.In("dist/lantern-tide.record.json"));
        Assert.DoesNotContain((byte)'\r', text);
        Assert.Equal("}\n"u8.ToArray(), text[^2..]);
    }

    [Fact]
    public void A_board_of_another_platform_makes_no_record()
    {
        using var bench = new CartBench(Board);
        Assert.Contains("CW5004", bench.Run());
        Assert.Empty(bench.Tree());
    }

    // sha256sum is GNU coreutils; a gzip file ends with the CRC-32 and the length of what it holds (RFC 1952).
    private static void CheckDigest(CartBench bench, string name, JsonElement digest)
    {
        var bytes = File.ReadAllBytes(bench.In(name));
        Assert.Equal(bytes.Length, digest.GetProperty("size").GetInt32());
        Assert.Equal(Tool.Succeed("sha256sum", bench.Path, name)[..64], Text(digest, "sha256"));
        Tool.Succeed("gzip", bench.Path, "--keep", "--force", name);
        var packed = File.ReadAllBytes(bench.In(name + ".gz"));
        File.Delete(bench.In(name + ".gz"));
        Assert.Equal($"{BinaryPrimitives.ReadUInt32LittleEndian(packed.AsSpan(packed.Length - 8)):X8}", Text(digest, "crc32"));
        Assert.Equal($"{bytes.Sum(value => value) & 0xFFFF:X4}", Text(digest, "sum16"));
    }

    private static JsonDocument Record(CartBench bench) => JsonDocument.Parse(File.ReadAllBytes(bench.In("dist/lantern-tide.record.json")));

    private static string Name(JsonElement file) => Text(file, "file");

    private static string Text(JsonElement element, params string[] path) => path.Aggregate(element, (at, name) => at.GetProperty(name)).GetString()!;
}
