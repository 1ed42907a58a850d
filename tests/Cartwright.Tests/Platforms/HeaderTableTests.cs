using Cartwright.Headers;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>What must hold of the tables of every platform.</summary>
public sealed class HeaderTableTests
{
    public static TheoryData<string, string, string> Tables() => new(
        PlatformCatalog.BuiltIn.All.SelectMany(platform => platform.Layouts.SelectMany(layout => layout.Headers.Select(table => (platform.Facts.Id, layout.Variant, table.Title)))));

    [Theory]
    [MemberData(nameof(Tables))]
    public void Fields_and_checksums_lie_inside_the_table(string platform, string variant, string title)
    {
        var table = Table(platform, variant, title);
        Assert.All(table.Fields, field => Assert.True(field.Offset >= 0 && field.Length > 0 && field.Offset + field.Length <= table.Length, field.Name));
        Assert.All(table.Checksums, row => Assert.True(row.Offset >= 0 && row.Length is >= 1 and <= 8 && row.Offset + row.Length <= table.Length, row.Name));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Names_are_unique_unless_the_rows_have_conditions_of_their_own(string platform, string variant, string title)
    {
        var table = Table(platform, variant, title);
        foreach (var rows in table.Fields.GroupBy(field => field.Name, StringComparer.OrdinalIgnoreCase).Where(rows => rows.Count() > 1))
        {
            Assert.DoesNotContain(null, rows.Select(row => row.When));
            Assert.Equal(rows.Count(), rows.Select(row => row.When).Distinct().Count());
        }

        var names = table.Fields.Select(field => field.Name).Distinct(StringComparer.OrdinalIgnoreCase).Concat(table.Checksums.Select(row => row.Name)).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void No_bit_has_two_owners(string platform, string variant, string title)
    {
        var table = Table(platform, variant, title);
        for (var i = 0; i < table.Fields.Length; i++)
        {
            var mine = Owned(table, table.Fields[i]);
            Assert.All(table.Checksums, row => Assert.False(mine.AsSpan(row.Offset, row.Length).ContainsAnyExcept((byte)0), $"{table.Fields[i].Name} and {row.Name}"));
            for (var j = i + 1; j < table.Fields.Length; j++)
            {
                var other = Owned(table, table.Fields[j]);
                var apart = mine.Zip(other, (left, right) => left & right).All(common => common == 0);
                Assert.True(apart || !Equals(table.Fields[i].When, table.Fields[j].When), $"{table.Fields[i].Name} and {table.Fields[j].Name}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Defaults_are_values_the_field_can_have(string platform, string variant, string title) =>
        Assert.All(Table(platform, variant, title).Fields.Where(field => field.Default is not null),
            field => Assert.Null(field.Codec.Write(field.Default!, new byte[field.Length])));

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_checksum_covers_rows_before_it(string platform, string variant, string title)
    {
        var rows = Table(platform, variant, title).Checksums;
        Assert.All(rows, row => Assert.All(row.Covers, covered => Assert.Contains(covered, rows.TakeWhile(before => before != row).Select(before => before.Name))));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Rows_say_what_they_mean_and_where_from(string platform, string variant, string title)
    {
        var table = Table(platform, variant, title);
        Assert.All(table.Fields, field => Assert.False(string.IsNullOrWhiteSpace(field.Meaning) || string.IsNullOrWhiteSpace(field.Source), field.Name));
        Assert.All(table.Checksums, row => Assert.False(string.IsNullOrWhiteSpace(row.Rule) || string.IsNullOrWhiteSpace(row.Source), row.Name));
    }

    private static HeaderTable Table(string platform, string variant, string title) =>
        PlatformCatalog.BuiltIn.Find(platform)!.Layouts.First(layout => layout.Variant == variant).Headers.First(table => table.Title == title);

    private static byte[] Owned(HeaderTable table, HeaderField field)
    {
        var bytes = new byte[table.Length];
        field.Codec.Mask(bytes.AsSpan(field.Offset, field.Length));
        return bytes;
    }
}
