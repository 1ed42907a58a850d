using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>What every header table of every platform must satisfy.</summary>
public sealed class HeaderTableTests
{
    public static TheoryData<string, string, string> Tables()
    {
        var data = new TheoryData<string, string, string>();
        foreach (var (platform, layout, table) in Rows())
            data.Add(platform.Facts.Id, layout.Variant, table.Title);

        return data;
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Fields_lie_inside_the_table(string platform, string variant, string title)
    {
        var table = Find(platform, variant, title);
        Assert.All(table.Fields, field => Assert.InRange(field.Offset + field.Length, field.Offset, table.Length));
        Assert.All(table.Fields, field => Assert.True(field.Offset >= 0, field.Name));
        Assert.All(table.Checksums, row => Assert.InRange(row.Offset + row.Length, row.Offset + 1, table.Length));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void No_bit_belongs_to_two_fields_at_once(string platform, string variant, string title)
    {
        var table = Find(platform, variant, title);
        foreach (var (left, right) in Pairs(table.Fields))
        {
            var both = MaskOf(table, left).Zip(MaskOf(table, right)).Any(pair => (pair.First & pair.Second) != 0);
            Assert.False(both && !MayExclude(left, right), $"{left.Name} and {right.Name} own the same bits");
        }
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void No_two_fields_have_the_same_name_at_once(string platform, string variant, string title)
    {
        var table = Find(platform, variant, title);
        foreach (var (left, right) in Pairs(table.Fields))
            Assert.False(string.Equals(left.Name, right.Name, StringComparison.OrdinalIgnoreCase) && !MayExclude(left, right), left.Name);

        var sums = table.Checksums.Select(row => row.Name).ToList();
        Assert.Equal(sums, sums.Distinct(StringComparer.OrdinalIgnoreCase));
        Assert.DoesNotContain(table.Fields, field => sums.Contains(field.Name, StringComparer.OrdinalIgnoreCase));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Names_are_camel_case_and_rows_say_what_they_are(string platform, string variant, string title)
    {
        var table = Find(platform, variant, title);
        Assert.All(table.Fields, field => Assert.Matches("^[a-z][A-Za-z0-9]*$", field.Name));
        Assert.All(table.Fields, field => Assert.NotEmpty(field.Meaning));
        Assert.All(table.Fields, field => Assert.NotEmpty(field.Source));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Defaults_can_be_written(string platform, string variant, string title)
    {
        foreach (var field in Find(platform, variant, title).Fields)
            if (field.Default is { } text)
                Assert.Null(field.Codec.Write(text, new byte[field.Length]));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_word_of_a_list_can_be_written(string platform, string variant, string title)
    {
        foreach (var field in Find(platform, variant, title).Fields.Where(field => MaskOf(field).Any(mask => mask != 0)))
            Assert.All(field.Codec.Names, name => Assert.Null(field.Codec.Write(name.Name, new byte[field.Length])));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void What_is_read_is_written_back_the_same(string platform, string variant, string title)
    {
        var random = new Random(1);
        foreach (var field in Find(platform, variant, title).Fields)
            for (var run = 0; run < 300; run++)
                RoundTrip(field, random);
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Checksums_cover_checksums_that_are_there_and_stored_before(string platform, string variant, string title)
    {
        var seen = new HashSet<string>();
        foreach (var row in Find(platform, variant, title).Checksums)
        {
            Assert.All(row.Covers, name => Assert.Contains(name, seen));
            seen.Add(row.Name);
        }
    }

    private static void RoundTrip(HeaderField field, Random random)
    {
        var before = new byte[field.Length];
        random.NextBytes(before);
        // Blank and nearly blank fields are as common as random ones.
        if (random.Next(4) == 0)
            before.AsSpan(random.Next(field.Length + 1)).Clear();

        var after = before.ToArray();
        var text = field.Codec.Read(before);
        Assert.True(field.Codec.Write(text, after) is null, $"{field.Name}: {text}");
        Assert.Equal(before, after);

        var other = before.Zip(MaskOf(field), (value, mask) => (byte)(value ^ ~mask)).ToArray();
        Assert.Null(field.Codec.Write(MaskOf(field).Any(mask => mask != 0) ? text : field.Codec.Read(other), other));
        Assert.All(before.Zip(other, MaskOf(field)), row => Assert.Equal(row.First & row.Third, row.Second & row.Third));
    }

    private static bool MayExclude(HeaderField left, HeaderField right) =>
        (left.When is not null || right.When is not null) && left.When != right.When;

    private static IEnumerable<(HeaderField Left, HeaderField Right)> Pairs(ImmutableArray<HeaderField> fields) =>
        fields.SelectMany((left, i) => fields.Skip(i + 1).Select(right => (left, right)));

    private static byte[] MaskOf(HeaderField field)
    {
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        return mask;
    }

    private static byte[] MaskOf(HeaderTable table, HeaderField field)
    {
        var mask = new byte[table.Length];
        MaskOf(field).CopyTo(mask, field.Offset);
        return mask;
    }

    private static IEnumerable<(Platform Platform, PlatformLayout Layout, HeaderTable Table)> Rows() =>
        from platform in PlatformCatalog.BuiltIn.All
        from layout in platform.Layouts
        from table in layout.Headers
        select (platform, layout, table);

    private static HeaderTable Find(string platform, string variant, string title) =>
        Rows().First(row => row.Platform.Facts.Id == platform && row.Layout.Variant == variant && row.Table.Title == title).Table;
}
