using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>What every header table of every platform must keep to.</summary>
public sealed class HeaderTableTests
{
    public static TheoryData<string, string> Layouts()
    {
        var data = new TheoryData<string, string>();
        foreach (var platform in PlatformCatalog.BuiltIn.All)
        {
            foreach (var layout in platform.Layouts)
                data.Add(platform.Facts.Id, layout.Variant);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Names_are_unique(string platform, string variant)
    {
        var options = PlatformCatalog.BuiltIn.Find(platform)!.Options.Select(option => option.Name);
        var rows = Tables(platform, variant).SelectMany(table => table.Fields.Select(field => field.Name).Concat(table.Checksums.Select(row => row.Name)));
        Assert.Distinct(rows.Concat(options), StringComparer.OrdinalIgnoreCase);
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Rows_lie_inside_their_table_and_own_some_bit(string platform, string variant)
    {
        foreach (var table in Tables(platform, variant))
        {
            Assert.All(table.Fields, field => Assert.InRange(field.Offset, 0, table.Length - field.Length));
            Assert.All(table.Checksums, row => Assert.InRange(row.Offset, 0, table.Length - row.Length));
            Assert.All(table.Fields, field => Assert.Contains(Mask(field), bits => bits != 0));
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void No_bit_has_two_owners_at_the_same_time(string platform, string variant)
    {
        foreach (var table in Tables(platform, variant))
        {
            for (var i = 0; i < table.Fields.Length; i++)
            {
                Assert.All(table.Checksums, row => Assert.False(Overlap(table.Fields[i], row), $"{table.Fields[i].Name} and {row.Name} share bits"));
                Assert.All(table.Fields[..i], other => Assert.False(Overlap(table.Fields[i], other), $"{table.Fields[i].Name} and {other.Name} share bits"));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Defaults_can_be_written(string platform, string variant)
    {
        foreach (var field in Tables(platform, variant).SelectMany(table => table.Fields).Where(field => field.Default is not null))
            Assert.Null(field.Codec.Write(field.Default!, new byte[field.Length]));
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Every_name_of_a_value_can_be_written_and_reads_back_as_a_name_of_that_value(string platform, string variant)
    {
        foreach (var field in Tables(platform, variant).SelectMany(table => table.Fields))
        {
            foreach (var name in field.Codec.Names)
            {
                var bytes = new byte[field.Length];
                Assert.Null(field.Codec.Write(name.Name, bytes));
                var read = field.Codec.Read(bytes);
                Assert.Equal(name.Value, field.Codec.Names.First(row => row.Name == read).Value);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Checksums_cover_earlier_rows_that_exist(string platform, string variant)
    {
        foreach (var table in Tables(platform, variant))
        {
            for (var i = 0; i < table.Checksums.Length; i++)
                Assert.Subset(table.Checksums[..i].Select(row => row.Name).ToHashSet(), table.Checksums[i].Covers.ToHashSet());
        }
    }

    private static ImmutableArray<HeaderTable> Tables(string platform, string variant) =>
        PlatformCatalog.BuiltIn.Find(platform)!.Layouts.Single(layout => layout.Variant == variant).Headers;

    private static byte[] Mask(HeaderField field)
    {
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        return mask;
    }

    private static bool Overlap(HeaderField field, ChecksumRow row) =>
        Mask(field).Index().Any(item => item.Item != 0 && field.Offset + item.Index >= row.Offset && field.Offset + item.Index < row.Offset + row.Length);

    // Two rows that each apply under a condition of their own may take turns.
    private static bool Overlap(HeaderField left, HeaderField right)
    {
        if (left.When is not null && right.When is not null && left.When != right.When)
            return false;

        var leftMask = Mask(left);
        var rightMask = Mask(right);
        return leftMask.Index().Any(item =>
            item.Index + left.Offset - right.Offset is var at && at >= 0 && at < rightMask.Length && (item.Item & rightMask[at]) != 0);
    }
}
