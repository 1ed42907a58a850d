using Cartwright.Manifests;
using Xunit;

namespace Cartwright.Tests.Manifests;

public sealed class HeaderKeepTests
{
    [Theory]
    [InlineData("", null)]
    [InlineData("\"header\": { \"keep\": true }", true)]
    [InlineData("\"header\": { \"keep\": \"TRUE\" }", true)]
    [InlineData("\"header\": { \"KEEP\": false }", false)]
    public void All_of_the_program_s_bytes_are_kept_or_none(string members, bool? all)
    {
        var keep = (members.Length == 0 ? ManifestText.Of(ManifestText.Good) : ManifestText.With(members)).Manifest!.Header.Keep;
        Assert.Equal(all, keep.All);
        Assert.Empty(keep.Fields);
    }

    [Fact]
    public void Single_fields_are_kept_by_name_and_keep_itself_is_no_field()
    {
        var header = ManifestText.With("\"header\": { \"keep\": [ \"title\", \"Checksum\" ] }").Manifest!.Header;
        Assert.Null(header.Keep.All);
        Assert.True(header.Keep.Names("TITLE"));
        Assert.True(header.Keep.Names("checksum"));
        Assert.False(header.Keep.Names("speed"));
        Assert.Empty(header.Values);
    }

    [Fact]
    public void An_empty_list_keeps_nothing() =>
        Assert.Equal(HeaderKeep.Unsaid, ManifestText.With("\"header\": { \"keep\": [ ] }").Manifest!.Header.Keep);
}
