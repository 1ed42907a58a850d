using Cartwright.Documents;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Documents;

public sealed class PlatformPageTests
{
    private static readonly string Page = PlatformPage.Markdown(new SamplePlatform());

    [Fact]
    public void The_page_of_platforms_is_up_to_date() => Approved.Equal("docs/platforms.md", PlatformPages.Markdown(PlatformCatalog.BuiltIn));

    [Theory]
    [InlineData("- Platform: `sample`; also written `smp`")]
    [InlineData("- Cartridge bus: 8 data lines, 3.3 V")]
    [InlineData("- Byte order of the processor: little-endian")]
    [InlineData("- Addresses: an address such as $8000")]
    [InlineData("- Size: a power of two from 32 KiB to 128 KiB")]
    [InlineData("- Fill: 0xFF")]
    [InlineData("- CW4990 (note): Sample finding")]
    [InlineData("| `low`  | at the start |")]
    public void Facts_options_and_regions_are_told(string line) => Assert.Contains(line, Lines());

    [Theory]
    [InlineData("32 bytes (0x20) of the region `prg`, from 0x0100 (low); 0x8100 (high) on. Offsets count from the header's first byte.")]
    [InlineData("A container of 4 bytes (0x04): it stands outside the ROM, in front of it in the exchange file, and no chip holds it.")]
    public void The_place_of_a_header_is_told(string line) => Assert.Contains(line, Lines());

    [Theory]
    [InlineData("| title | +0x00 | 16 | `cart.title` (required) |")]
    [InlineData("| speed | +0x10 | 1, bit 4 | `slow` |")]
    [InlineData("| battery | +0x10 | 1, bits 7, 1-0 | `false` |")]
    [InlineData("| romSize | +0x11 | 1 | worked out |")]
    [InlineData("| revision | +0x12 | 1 | `cart.revision`, else `1` (low); `cart.revision`, else `2` (high) |")]
    [InlineData("| mark | 0x0000 | 4 | zero |")]
    public void A_row_is_told_once_with_what_differs_between_layouts(string line) => Assert.Contains(Squeeze(line), Lines().Select(Squeeze));

    [Theory]
    [InlineData("Speed | grade.")]
    [InlineData("- Value: one of the words below, or the raw value such as 0x1B.")]
    [InlineData("| 0x01  | `fast` | 120 ns |")]
    [InlineData("Words: `false` = 0x00, `true` = 0x01.")]
    [InlineData("Words: `32KiB` = 0x00, `64KiB` = 0x01.")]
    [InlineData("Not used. Only in some headers, as the fields before it say.")]
    public void The_values_of_a_field_are_told(string line) => Assert.Contains(line, Lines());

    [Theory]
    [InlineData("- Rule: sum of all bytes.")]
    [InlineData("- Stored: +0x1E, 2 bytes, low byte first.")]
    [InlineData("- Other checksums it covers: `other`.")]
    [InlineData("- Enforced: the console refuses a wrong value.")]
    public void A_checksum_is_told(string line) => Assert.Contains(line, Lines());

    [Fact]
    public void Every_field_checksum_trap_and_source_of_every_platform_is_on_its_page()
    {
        foreach (var platform in PlatformCatalog.BuiltIn.All)
        {
            var lines = PlatformPage.Markdown(platform).Split('\n');
            var tables = platform.Layouts.SelectMany(layout => layout.Headers).ToList();
            Assert.All(tables.SelectMany(table => table.Fields), field => Assert.Contains("### " + field.Name, lines));
            Assert.All(tables.SelectMany(table => table.Checksums), row => Assert.Contains("### Checksum " + row.Name, lines));
            Assert.All(platform.Facts.Traps.AddRange(platform.Facts.Sources), text => Assert.Contains("- " + text, lines));
        }
    }

    [Fact]
    public void The_pages_begin_with_a_table_of_contents_that_leads_to_each()
    {
        var pages = PlatformPages.Markdown(SamplePlatform.Catalog);
        Assert.Contains("| [sample](#sample) | Sample Console | sample header, sample container |", pages, StringComparison.Ordinal);
        Assert.Contains("<a id=\"sample\"></a>\n\n## Sample Console\n", pages, StringComparison.Ordinal);
        Assert.Contains("\n### Regions\n", pages, StringComparison.Ordinal);
    }

    private static string[] Lines() => Page.Split('\n');

    // Widths of columns depend on the longest cell, which is not the matter here.
    private static string Squeeze(string line) => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
