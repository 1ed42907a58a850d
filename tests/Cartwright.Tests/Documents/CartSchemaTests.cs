using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cartwright.Documents;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;
using Json.Schema;
using Xunit;

namespace Cartwright.Tests.Documents;

public sealed class CartSchemaTests
{
    private const string Good = """{ "cart": { "name": "lantern-tide", "platform": "sample" }, "programs": [ { "file": "main.bin" } ] }""";

    private static readonly string Text = CartSchema.Json(PlatformCatalog.BuiltIn);
    private static readonly JsonSchema BuiltIn = SchemaCheck.Build(Text);
    private static readonly JsonSchema Sample = SchemaCheck.Build(CartSchema.Json(SamplePlatform.Catalog));

    public static TheoryData<string> Examples =>
    [
        .. new[] { "examples", "templates" }
            .SelectMany(static folder => Directory.EnumerateFiles(Path.Combine(Approved.RepositoryRoot(), folder), "cart.json", SearchOption.AllDirectories))
            .Select(static path => Path.GetRelativePath(Approved.RepositoryRoot(), path))
            .Order(StringComparer.Ordinal),
    ];

    [Fact]
    public void The_schema_is_up_to_date() => Approved.Equal("docs/cart.schema.json", Text);

    [Fact]
    public void The_schema_is_a_schema_of_its_draft()
    {
        using var document = JsonDocument.Parse(Text);
        Assert.Equal(MetaSchemas.Draft202012Id.ToString(), document.RootElement.GetProperty("$schema").GetString());
        Assert.True(MetaSchemas.Draft202012.Evaluate(document.RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_examples_are_valid(string path) => Assert.Empty(SchemaCheck.Errors(BuiltIn, File.ReadAllText(Path.Combine(Approved.RepositoryRoot(), path))));

    [Theory]
    [InlineData("gb", "\"programs\"", "\"progams\"")]
    [InlineData("gb", "\"platform\": \"gb\"", "\"platform\": \"gbx\"")]
    [InlineData("md", "\"512KiB\"", "\"512 kilo\"")]
    [InlineData("nes", "\"raw\"", "\"rawer\"")]
    [InlineData("snes", "\"$018000\"", "\"$01G000\"")]
    [InlineData("snes", "\"lorom\"", "\"lowrom\"")]
    [InlineData("intv", "\"header\": {", "\"header\": { \"colour\": \"red\",")]
    public void A_spoilt_example_is_not(string platform, string right, string wrong)
    {
        var manifest = File.ReadAllText(Path.Combine(Approved.RepositoryRoot(), "examples", $"lantern-tide-{platform}", "cart.json"));
        Assert.Contains(right, manifest, StringComparison.Ordinal);
        Assert.False(SchemaCheck.IsValid(BuiltIn, manifest.Replace(right, wrong, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_example_of_the_page_is_valid() => Assert.Empty(SchemaCheck.Errors(BuiltIn, ManifestPage.Example));

    [Theory]
    [InlineData("cart:title", "\"LANTERN TIDE\"")]
    [InlineData("cart:revision", "1")]
    [InlineData("cart:revision", "\"0x01\"")]
    [InlineData("cart:platform", "\"smp\"")]
    [InlineData("programs:0:region", "\"prg\"")]
    [InlineData("regions:prg:size", "\"fit\"")]
    [InlineData("regions:prg:size", "65536")]
    [InlineData("header:keep", "true")]
    [InlineData("header:keep", "[ \"title\" ]")]
    [InlineData("header:wiring", "\"high\"")]
    [InlineData("header:speed", "\"fast\"")]
    [InlineData("header:speed", "\"0x01\"")]
    [InlineData("header:battery", "true")]
    [InlineData("header:romSize", "\"64KiB\"")]
    [InlineData("header:romSize", "\"raw 0x05\"")]
    [InlineData("header:spare", "\"12 34\"")]
    [InlineData("header:sum", "\"0x1234\"")]
    [InlineData("board:sites:0:width", "16")]
    [InlineData("board:expects:mapper", "[ \"nrom\", \"cnrom\" ]")]
    [InlineData("board:chips:U1:part", "\"SST39SF040\"")]
    [InlineData("board:chips:U1:part", "\"SST39SF040-70-4C-PHE\"")]
    [InlineData("images:formats", "\"raw\"")]
    [InlineData("images:formats", "[ \"raw\", \"s-record\" ]")]
    public void A_right_value_is_valid(string key, string value) => Assert.Empty(SchemaCheck.Errors(Sample, With(key, value)));

    [Theory]
    [InlineData("colour", "\"red\"")] // no such key
    [InlineData("cart:colour", "\"red\"")]
    [InlineData("programs:0:colour", "\"red\"")]
    [InlineData("header:colour", "\"red\"")]
    [InlineData("board:chips:U1:colour", "\"red\"")]
    [InlineData("cart", "\"lantern-tide\"")] // wrong kind of value
    [InlineData("cart:name", "[ \"lantern-tide\" ]")]
    [InlineData("cart:revision", "\"one\"")]
    [InlineData("programs", "\"main.bin\"")]
    [InlineData("programs:0:offset", "\"start\"")]
    [InlineData("regions:prg:fill", "256")]
    [InlineData("header:keep", "\"title\"")]
    [InlineData("board:busVolts", "\"five\"")]
    [InlineData("cart:platform", "\"no-such-console\"")] // no such word
    [InlineData("programs:0:region", "\"chr\"")]
    [InlineData("programs:0:format", "\"tape\"")]
    [InlineData("regions:chr:size", "\"fit\"")]
    [InlineData("regions:prg:size", "\"small\"")]
    [InlineData("rom:size", "\"fit\"")] // the sample has no region of that name
    [InlineData("header:wiring", "\"middle\"")]
    [InlineData("header:speed", "\"medium\"")]
    [InlineData("header:romSize", "\"raw\"")]
    [InlineData("board:busWidth", "12")]
    [InlineData("images:formats", "[ \"raw\", \"tape\" ]")]
    [InlineData("images:wordOrder", "\"reverse\"")]
    public void A_wrong_value_is_not(string key, string value) => Assert.False(SchemaCheck.IsValid(Sample, With(key, value)));

    [Theory]
    [InlineData("""{ "programs": [ { "file": "main.bin" } ] }""")]
    [InlineData("""{ "cart": { "name": "lantern-tide", "platform": "sample" } }""")]
    [InlineData("""{ "cart": { "name": "lantern-tide" }, "programs": [ { "file": "main.bin" } ] }""")]
    [InlineData("""{ "cart": { "name": "lantern-tide", "platform": "sample" }, "programs": [ { "offset": "0" } ] }""")]
    public void A_missing_key_is_not_valid(string manifest)
    {
        Assert.True(SchemaCheck.IsValid(Sample, Good));
        Assert.False(SchemaCheck.IsValid(Sample, manifest));
    }

    // What a form lets through is what the reader of that form reads.
    [Theory]
    [InlineData("size", "524288", "0x80000", "$80000", "512KiB", "512 kib", "0.5MiB", "4Mbit", ".5K", "16bytes", "8_192", "-1", "12KiX", "", "0x", "$", "1,5K", "K", "fit", "0x10KiB", "1.5")]
    [InlineData("number", "0", "32768", "0x8000", "$8000", "1_000", "0xF_F", "", "-1", "8000h", "0x", "1.5", "0xG", "12KiB")]
    [InlineData("address", "$C08000", "0x10", "12", "03:4000", "$03:$4000", "FF:FFFF", "3:", ":4000", "3:4:5", "C08000", "0x03:4000", "")]
    [InlineData("fraction", "5", "3.3", ".5", "5.", "", "-1", "five", "1e3", "0x5")]
    [InlineData("byte", "0", "255", "256", "0xFF", "$ff", "0x100", "0x0FF", "007", "-1", "999", "")]
    [InlineData("truth", "true", "False", "TRUE", "yes", "1", "")]
    [InlineData("code", "0x1B", "$1b", "27", "0x", "1B", "")]
    [InlineData("sizeOrCode", "32KiB", "64KiB", "raw 0x05", "RAW $05", "raw", "raw 5", "0x", "none?")]
    public void A_form_of_values_takes_what_its_reader_takes(string form, params string[] texts)
    {
        var definitions = JsonNode.Parse(Text)!["$defs"]!.DeepClone();
        var schema = SchemaCheck.Build(new JsonObject { ["$defs"] = definitions, ["$ref"] = "#/$defs/" + form }.ToJsonString());
        Assert.All(texts, text => Assert.True(Takes(form, text) == SchemaCheck.IsValid(schema, JsonSerializer.Serialize(text)), $"`{text}` as {form}"));
    }

    // The words and defaults that a platform's table lists are right for its own codec and for the schema.
    [Fact]
    public void Words_and_defaults_of_every_header_field_are_valid()
    {
        foreach (var platform in PlatformCatalog.BuiltIn.All.Append(new SamplePlatform()))
        {
            var schema = platform is SamplePlatform ? Sample : BuiltIn;
            var fields = platform.Layouts.SelectMany(layout => layout.Headers).SelectMany(table => table.Fields).ToList();
            foreach (var (name, value) in fields.SelectMany(field => field.Codec.Names.Select(row => row.Name).Append(field.Default).OfType<string>().Select(value => (field.Name, value))).Distinct())
            {
                var manifest = JsonNode.Parse(Good)!;
                manifest["cart"]!["platform"] = platform.Facts.Id;
                manifest["header"] = new JsonObject { [name] = value };
                Assert.Empty(SchemaCheck.Errors(schema, manifest.ToJsonString()).Select(error => $"{platform.Facts.Id} {name} {value}: {error}"));
            }
        }
    }

    private static bool Takes(string form, string text) => form switch
    {
        "size" => ByteSize.TryParse(text, out _),
        "number" => Number.TryParse(text, out long _),
        "address" => ConsoleAddress.TryParse(text, out _),
        "truth" => bool.TryParse(text, out _),
        "code" => new NamedValues().TryParse(text, out _),
        "sizeOrCode" => new SizeCode((0UL, 0L), (1UL, 1L << 15), (2UL, 1L << 16)).TryParse(text, out _),
        _ => Reads(form == "byte" ? "rom:fill" : "board:busVolts", text),
    };

    private static bool Reads(string key, string text)
    {
        var log = new Cartwright.Findings.FindingLog();
        var document = ManifestDocument.Read("cart.json", Encoding.UTF8.GetBytes(With(key, JsonSerializer.Serialize(text))), ManifestOverrides.None, log)!;
        _ = key == "rom:fill" ? document.Root["rom"].Byte("fill", log) : document.Root["board"].Fraction("busVolts", log);
        return log.Count == 0;
    }

    private static string With(string key, string value)
    {
        var manifest = JsonNode.Parse(Good)!;
        var parts = key.Split(':');
        var node = manifest;
        foreach (var part in parts[..^1])
        {
            node = node is JsonArray list ? list[0]! : node[part] ??= part == "sites" ? new JsonArray(new JsonObject { ["site"] = "U1" }) : new JsonObject();
        }

        node[parts[^1]] = JsonNode.Parse(value);
        return manifest.ToJsonString();
    }
}
