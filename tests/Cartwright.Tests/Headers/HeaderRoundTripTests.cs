using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Roms;
using Cartwright.Tests.Platforms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Headers;

public sealed class HeaderRoundTripTests
{
    [Property(MaxTest = 200)]
    public void What_was_written_reads_back_the_same(ulong title, byte revision, bool battery, byte speed, byte save, ushort entry, ushort maker, bool high, byte size)
    {
        string[] speeds = ["slow", "fast", "turbo"];
        string[] saves = ["none", "8KiB", "32KiB", "raw 0x77"];
        var bench = new RomBench(new TestPlatform()) { Title = $"{title % 100_000_000:D8}", Revision = $"{revision}" }
            .Program("rom", 0x60, TestBytes.L(0x40))
            .Size("rom", TestPlatform.Smallest << (size % 5))
            .Header("mapping", high ? "high" : "low").Header("battery", battery ? "true" : "false").Header("speed", speeds[speed % 3])
            .Header("saveRam", saves[save % 4]).Header("maker", $"{maker:X4}");
        if (battery)
            bench.Header("entry", $"{entry}");

        var cart = bench.Assemble();
        var table = cart.Layout.Headers[0];
        var read = HeaderReader.Read(table, cart.Bytes("rom"), new HeaderContext(null, null, cart.Rom.LengthOf));
        Assert.NotNull(read);
        Assert.Equal(cart.Headers[0].Entries.Select(Show), read.Entries.Select(Show));
        Assert.Equal(cart.Headers[0].Checksums.Select(row => (row.Offset, row.Stored, row.Computed)), read.Checksums.Select(row => (row.Offset, row.Stored, row.Computed)));
        Assert.True(read.Checksums[0].Right);
        Assert.Equal(high ? cart.Bytes("rom").Length - TestPlatform.HeaderLength : TestPlatform.LowStart, read.Entries[0].Offset);
    }

    [Property(MaxTest = 200)]
    public void Any_bytes_can_be_read_as_a_header(byte[] bytes)
    {
        var region = new byte[0x100];
        bytes.AsSpan(0, Math.Min(bytes.Length, 0x30)).CopyTo(region.AsSpan(TestPlatform.LowStart));
        var read = HeaderReader.Read(TestPlatform.Table, region, new HeaderContext(null, null, _ => 0));
        Assert.InRange(read!.Entries.Length, 7, 8);
    }

    [Fact]
    public void Bytes_that_end_before_the_header_have_none()
    {
        var context = new HeaderContext(null, null, _ => 0);
        Assert.Null(HeaderReader.Read(TestPlatform.Table, new byte[TestPlatform.LowStart + TestPlatform.HeaderLength - 1], context));
        Assert.Null(HeaderReader.Read(TestPlatform.Table with { Anchor = new HeaderAnchor(0x40, FromEnd: true) }, new byte[0x3F], context));
    }

    [Theory]
    [InlineData(0x10, false, 0x2F, "0x000030 (48 bytes)")]
    [InlineData(0x40, true, 0x3F, "0x000040 (64 bytes)")]
    public void A_region_without_room_for_its_header_is_told_what_is_needed(int offset, bool fromEnd, int length, string needed)
    {
        var log = new FindingLog();
        var table = TestPlatform.Table with { Anchor = new HeaderAnchor(offset, fromEnd) };
        var writer = new HeaderWriter(Cartwright.Manifests.HeaderSettings.None, new HeaderContext(null, null, _ => length), new SourcePlace("cart.json"), log);
        Assert.Null(writer.Write(table, new RegionImage("rom", new byte[length], 0xFF, [])));
        var finding = Assert.Single(log.ToSorted());
        Assert.Equal("CW4009", finding.Code);
        Assert.Contains(needed, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_container_stands_by_itself()
    {
        var cart = new RomBench(new TwoRegionPlatform()).Program("prg", 0, TestBytes.L(0x180)).Assemble();
        var container = Assert.Single(cart.Headers);
        Assert.Equal("5457494E02000000", Convert.ToHexString(container.Container.AsSpan()));
        var read = HeaderReader.Read(container.Table, container.Container.AsSpan(), new HeaderContext(null, null, cart.Rom.LengthOf));
        Assert.Equal(container.Entries.Select(Show), read!.Entries.Select(Show));
        Assert.Equal(container.Container, read.Container);
    }

    [Fact]
    public void A_header_of_a_region_the_cart_does_without_is_not_taken_for_a_container()
    {
        var without = new RomBench(new TwoRegionPlatform()).Program("prg", 0, [1]).Assemble();
        Assert.Null(without["tiles"]);
        var with = new RomBench(new TwoRegionPlatform()).Program("prg", 0, [1]).Program("chr", 0x10, [1]).Assemble();
        Assert.Equal("TILE", with["tiles"]);
        Assert.True(with.Bytes("chr").StartsWith("TILE"u8));
    }

    [Fact]
    public void An_optional_region_that_is_wrong_is_not_built_without()
    {
        var bench = new RomBench(new TwoRegionPlatform()).Program("prg", 0, [1]).Program("chr", 0x400, [1]);
        Assert.Null(bench.TryAssemble());
        Assert.Equal([RomFindings.TooLarge.Code], bench.Codes());
    }

    [Fact]
    public void Unknown_fields_options_and_kept_names_are_told()
    {
        var bench = new RomBench(new TestPlatform()).Program("rom", 0x80, [1]).Header("sped", "fast").Header("mapping", "lo").Header("speed", "fats").Keep(null, "titel", "mapping");
        bench.TryAssemble();
        Assert.Equal(["CW4001", "CW4001", "CW4001", "CW4003", "CW4003"], bench.Codes());
        Assert.Contains(bench.Log.ToSorted(), finding => finding.Message.Contains("sped", StringComparison.Ordinal) && finding.Advice.Contains("speed", StringComparison.Ordinal));
    }

    private static string Show(HeaderEntry entry) => $"{entry.Field.Name} {entry.Offset:X} {Convert.ToHexString(entry.Raw.AsSpan())} {entry.Text}";
}
