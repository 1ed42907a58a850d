using Cartwright.Headers;
using Cartwright.Platforms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>What every header table of every platform must hold to.</summary>
public sealed class HeaderTableTests
{
    public static TheoryData<string, string> Tables =>
    [
        .. from platform in PlatformCatalog.BuiltIn.All
           from layout in platform.Layouts
           select new TheoryDataRow<string, string>(platform.Facts.Id, layout.Variant),
    ];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Rows_lie_inside_the_table_under_names_of_their_own(string platform, string variant)
    {
        foreach (var table in TablesOf(platform, variant))
        {
            Assert.All(table.Fields, field => Assert.InRange(field.Offset, 0, table.Length - field.Length));
            Assert.All(table.Checksums, row => Assert.InRange(row.Offset, 0, table.Length - row.Length));
            var names = table.Fields.Where(field => field.When is null).Select(field => field.Name).Concat(table.Checksums.Select(row => row.Name)).ToList();
            Assert.Equal(names.Distinct(StringComparer.OrdinalIgnoreCase), names);
            Assert.All(table.Checksums.SelectMany(row => row.Covers), name => Assert.Contains(name, table.Checksums.Select(row => row.Name)));
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void No_two_rows_that_are_always_there_own_the_same_bit(string platform, string variant)
    {
        foreach (var table in TablesOf(platform, variant))
        {
            var owned = new byte[table.Length];
            foreach (var row in table.Checksums)
                owned.AsSpan(row.Offset, row.Length).Fill(0xFF);

            foreach (var field in table.Fields.Where(field => field.When is null))
            {
                var mask = new byte[field.Length];
                field.Codec.Mask(mask);
                for (var i = 0; i < mask.Length; i++)
                {
                    Assert.True((owned[field.Offset + i] & mask[i]) == 0, $"{field.Name}, byte {i}");
                    owned[field.Offset + i] |= mask[i];
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Defaults_are_values_the_field_can_hold(string platform, string variant)
    {
        foreach (var field in TablesOf(platform, variant).SelectMany(table => table.Fields))
        {
            if (field.Default is { } text)
                Assert.Null(field.Codec.Write(text, new byte[field.Length]));
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_row_says_what_it_means_and_where_that_is_from(string platform, string variant)
    {
        foreach (var field in TablesOf(platform, variant).SelectMany(table => table.Fields))
        {
            Assert.NotEmpty(field.Meaning);
            Assert.NotEmpty(field.Source);
            Assert.NotEmpty(field.Codec.Expected);
        }
    }

    [Property]
    public void Text_read_from_any_bytes_gives_the_same_bytes_back(int seed)
    {
        foreach (var field in PlatformCatalog.BuiltIn.All.SelectMany(platform => platform.Layouts).SelectMany(layout => layout.Headers).SelectMany(table => table.Fields))
        {
            var bytes = new byte[field.Length];
            new Random(seed).NextBytes(bytes);
            AssertRestored(field, bytes);
        }
    }

    /// <summary>Fails unless the text of a field's bytes, written back, gives the bits the field owns.</summary>
    internal static void AssertRestored(HeaderField field, byte[] bytes)
    {
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        var text = field.Codec.Read(bytes);
        var back = new byte[field.Length];
        Assert.Null(field.Codec.Write(text, back));
        for (var i = 0; i < bytes.Length; i++)
            Assert.True((bytes[i] & mask[i]) == (back[i] & mask[i]), $"{field.Name} `{text}` of {Convert.ToHexString(bytes)} gave {Convert.ToHexString(back)}");
    }

    private static IEnumerable<HeaderTable> TablesOf(string platform, string variant) =>
        PlatformCatalog.BuiltIn.Find(platform)!.Layouts.Where(layout => layout.Variant == variant).SelectMany(layout => layout.Headers);
}
