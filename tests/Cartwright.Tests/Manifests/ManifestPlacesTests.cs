using System.Text;
using Xunit;

namespace Cartwright.Tests.Manifests;

/// <summary>The place of every fault. Lines end at LF; columns count UTF-16 units from 1.</summary>
public sealed class ManifestPlacesTests
{
    [Theory]
    [InlineData("{\n  \"cart\" oops\n}", "CW1002 2,10")]
    [InlineData("{\r\n  \"cart\" oops\r\n}", "CW1002 2,10")]
    [InlineData("{ \"é€😀\": oops }", "CW1002 1,11")]
    [InlineData("{\r\n\r\n\"é\": \"ü\", oops }", "CW1002 3,11")]
    [InlineData("", "CW1002 1,1")]
    [InlineData("{", "CW1002 1,2")]
    [InlineData("{ \"a\": 1 } x", "CW1002 1,12")]
    [InlineData("\n  []", "CW1002 2,3")]
    [InlineData("null", "CW1002 1,1")]
    [InlineData(" 7", "CW1002 1,2")]
    [InlineData("\"text\"", "CW1002 1,1")]
    public void Bad_JSON_is_told_with_its_line_and_column(string text, string place)
    {
        var read = ManifestText.Of(text);
        Assert.Null(read.Manifest);
        Assert.Equal([place], read.Places);
    }

    [Fact]
    public void A_byte_order_mark_does_not_move_the_column()
    {
        byte[] text = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("{ oops }")];
        Assert.Equal(["CW1002 1,3"], ManifestText.Of(text).Places);
    }

    [Fact]
    public void A_byte_order_mark_comments_and_trailing_commas_are_read()
    {
        byte[] text = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("// first\n" + ManifestText.Good.Replace(" } ] }", ", }, ], /* last */ }", StringComparison.Ordinal))];
        var read = ManifestText.Of(text);
        Assert.Empty(read.Findings);
        Assert.Equal("lantern-tide", read.Manifest!.Cart.Name.Text);
    }

    [Theory]
    [InlineData("{ \"\\ud800\": 1 }", "CW1002 1,3")]
    [InlineData("{ \"a\":\n \"\\udc00\" }", "CW1002 2,2")]
    [InlineData("{ \"a\": [ 1, \"\\ud83d\" ] }", "CW1002 1,13")]
    public void Half_a_character_is_bad_text(string text, string place) => Assert.Equal([place], ManifestText.Of(text).Places);

    [Fact]
    public void Bytes_that_are_no_UTF_8_are_bad_text()
    {
        byte[] text = [.. "{ \""u8, 0xC3, 0x28, .. "\": 1 }"u8];
        Assert.Equal(["CW1002"], ManifestText.Of(text).Findings.Select(finding => finding.Code));
    }

    [Theory]
    [InlineData("\"cart\": {\n \"name\": \"a\",\n \"NAME\": \"b\" }", "CW1007 3,2")]
    [InlineData("\"cart\": { \"name\": \"a\" },\n\"Cart\": { }", "CW1007 2,1")]
    [InlineData("\"cart\": { \"name\": \"a\" },\n\"cart:name\": \"b\"", "CW1007 2,1")]
    [InlineData("\"programs\": [ { \"file\": \"a\",\n\"File\": \"b\" } ]", "CW1007 2,1")]
    [InlineData("\"programs:0\": \"a\",\n\"programs\": [ \"b\" ]", "CW1007 2,15")]
    public void A_key_given_twice_is_told_where_it_stands_the_second_time(string members, string place) =>
        Assert.Equal([place], ManifestText.Of("{ " + members + " }").Places);

    [Fact]
    public void A_value_is_placed_at_its_key()
    {
        var manifest = ManifestText.Clean("{\n  \"cart\": { \"name\": \"a\",\r\n\t\"platform\": \"b\" },\n  \"programs\": [\n    { \"file\": \"x\" }, { \"file\": \"y\" } ] }");
        Assert.Equal((3, 2), (manifest.Cart.Platform.Place.Line, manifest.Cart.Platform.Place.Column));
        Assert.Equal("cart:platform", manifest.Cart.Platform.Place.Key);
        Assert.Equal((5, 22), (manifest.Programs[1].Place.Line, manifest.Programs[1].Place.Column));
        Assert.Equal((5, 24), (manifest.Programs[1].File.Place.Line, manifest.Programs[1].File.Place.Column));
    }

    [Fact]
    public void A_missing_key_is_told_at_the_group_that_lacks_it()
    {
        var read = ManifestText.Of("{ \"programs\": [\n { \"file\": \"a\" },\n { } ],\n \"cart\": { \"name\": \"\" } }");
        Assert.Equal(["CW1004 3,2", "CW1004 4,2", "CW1004 4,2"], read.Places);
        Assert.Equal(["programs:1:file", "cart:name", "cart:platform"], read.Findings.Select(finding => finding.Place.Key));
    }

    [Fact]
    public void A_manifest_larger_than_any_manifest_is_not_read()
    {
        var read = ManifestText.Of(new byte[(1 << 20) + 1]);
        Assert.Equal(["CW1011 0,0"], read.Places);
    }
}
