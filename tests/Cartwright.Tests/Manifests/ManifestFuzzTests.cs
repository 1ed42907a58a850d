using System.Text;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Manifests;

/// <summary>Every text is answered with a manifest or with findings: an exception fails the test by itself.</summary>
public sealed class ManifestFuzzTests
{
    private const int Cases = 3000;

    private const string Whole = """
        { "$schema": "x", // comment
          "cart": { "name": "a", "platform": "b", "title": "é😀", "revision": 1 },
          "programs": [ { "file": "f", "format": "raw", "offset": "32KiB", "skip": "0x10", "length": 4 }, { "file": "g", "address": "03:8000" } ],
          "rom": { "size": "fit", "fill": 0 }, "regions": { "chr": { "size": "8KiB", "fill": "$FF" } },
          "header": { "keep": [ "title" ], "speed": "fast" },
          "board": { "busWidth": 16, "busVolts": 3.3, "expects": { "m": [ "x" ] }, "sites": [ { "site": "U1", "width": 8, "lane": "high", "start": "0", "length": "2MiB" } ],
                     "chips": { "U1": { "part": "p", "capacity": "1Mbit" } } },
          "images": { "folder": "out", "formats": [ "raw", "s-record" ] }, }
        """;

    private static readonly string[] Pieces =
        ["{", "}", "[", "]", ",", ":", "\"", "\\", "null", "true", "-1e999", "99999999999999999999", "\"\"", "\"a:b\"", "\\ud800", "//", "/*", "\n", "\0", "é", "\"cart\":", "\"0\":"];

    [Fact]
    public void A_damaged_manifest_never_throws()
    {
        var random = new Random(11);
        var accepted = 0;
        for (var i = 0; i < Cases; i++)
        {
            var text = new StringBuilder(Whole);
            for (var change = random.Next(1, 4); change > 0; change--)
            {
                var at = random.Next(text.Length);
                if (random.Next(2) == 0) text.Remove(at, random.Next(1, Math.Min(20, text.Length - at)));
                if (random.Next(3) > 0) text.Insert(Math.Min(at, text.Length), Pieces[random.Next(Pieces.Length)]);
            }

            accepted += Check(Encoding.UTF8.GetBytes(text.ToString())) ? 1 : 0;
        }

        Assert.InRange(accepted, Cases / 20, Cases - (Cases / 20));
    }

    [Fact]
    public void A_manifest_with_damaged_bytes_never_throws()
    {
        var random = new Random(12);
        for (var i = 0; i < Cases; i++)
        {
            var bytes = Encoding.UTF8.GetBytes(Whole);
            for (var change = random.Next(1, 4); change > 0; change--) bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            Check(random.Next(4) == 0 ? bytes[..random.Next(bytes.Length)] : bytes);
        }
    }

    // Any value in the place of any other: wrong kinds at every key.
    [Fact]
    public void A_value_of_any_kind_at_any_key_never_throws()
    {
        string[] values = ["null", "true", "7", "-7", "1e400", new string('9', 400), "\"\"", "\"x\"", "[]", "{}", "[[]]", "{\"\":{}}", "[null]", "{\"0\":1}", "\"9223372036854775807\"", "\"\\u0000\""];
        var paths = ManifestKeys.Rows.SelectMany(row => Prefixes(row.Pattern)).Distinct().ToList();
        foreach (var path in paths)
        {
            foreach (var value in values)
            {
                Check(Encoding.UTF8.GetBytes($$"""{ "{{path}}": {{value}}, "cart:name": "a", "cart:platform": "b" }"""));
                Check(Encoding.UTF8.GetBytes($$"""{ "{{path}}": {{value}} }"""));
            }
        }
    }

    [Property(MaxTest = 300)]
    public void Any_setting_over_a_good_manifest_never_throws(string? key, string? value)
    {
        var overrides = ManifestText.Set((key ?? "", value ?? ""));
        ManifestText.Of(ManifestText.Good, overrides);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(100)]
    [InlineData(100_000)]
    public void Deep_nesting_is_answered(int depth)
    {
        Check(Encoding.UTF8.GetBytes(new string('[', depth)));
        Check(Encoding.UTF8.GetBytes("{\"programs\":" + new string('[', depth) + new string(']', depth) + "}"));
        Check(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("{\"a\":", depth)) + "1" + new string('}', depth)));
    }

    // Reading must not take a time that grows with the square of the number of keys.
    [Fact]
    public void A_manifest_with_very_many_keys_is_answered()
    {
        var items = string.Join(',', Enumerable.Repeat("{\"f\":1}", 20_000));
        var read = ManifestText.Of("{\"programs\":[" + items + "]}");
        Assert.Contains(read.Findings, finding => finding.Code == "CW1003");
    }

    private static IEnumerable<string> Prefixes(string pattern)
    {
        var parts = pattern.Replace('#', '0').Replace('*', 'x').Split(':');
        return Enumerable.Range(1, parts.Length).Select(count => string.Join(':', parts[..count]));
    }

    private static bool Check(byte[] text)
    {
        var read = ManifestText.Of(text);
        Assert.All(read.Findings, finding => Assert.NotEmpty(FindingText.Line(finding)));
        if (read.Manifest is { } manifest) BoardChoice.Find(manifest.Board, "own", new FindingLog());
        return read.Findings.IsEmpty;
    }
}
