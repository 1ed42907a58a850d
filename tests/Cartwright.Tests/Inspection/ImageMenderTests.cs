using Cartwright.Checksums;
using Cartwright.Headers;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Tests.Platforms.Recognition;
using Xunit;

namespace Cartwright.Tests.Inspection;

/// <summary>Wrong size codes and checksums come right again; nothing else changes.</summary>
public sealed class ImageMenderTests
{
    public static TheoryData<string> Names => OpenedExample.Names;

    public static TheoryData<string> WithChecksums =>
        [.. ExampleCart.All.Where(row => row.Value.Cart.Headers.Any(header => header.Table.Region is not null && !header.Checksums.IsEmpty)).Select(row => row.Key)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_was_built_right_is_left_alone(string name)
    {
        var mended = OpenedExample.Mend(OpenedExample.Open(name));
        Assert.Empty(mended.Changes);
        Assert.Equal(ExampleCart.All[name].File, mended.Bytes.ToArray());
    }

    [Theory]
    [MemberData(nameof(WithChecksums))]
    public void Spoilt_checksums_come_right_again(string name)
    {
        var cart = ExampleCart.All[name];
        var file = cart.File.ToArray();
        var image = OpenedExample.Open(name);
        foreach (var (row, start) in Checksums(image))
            file.AsSpan(start, row.Length).Fill(0xA5);

        var mended = OpenedExample.Mend(OpenedExample.Open(cart, file));
        Assert.Equal(cart.File, mended.Bytes.ToArray());
        Assert.NotEmpty(mended.Changes);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Spoilt_size_codes_and_marks_come_right_again(string name)
    {
        var cart = ExampleCart.All[name];
        var image = OpenedExample.Open(name);
        foreach (var header in image.Cart.Headers.Where(header => header.Table.Region is not null))
        {
            foreach (var entry in header.Entries.Where(entry => entry.Field is { Mended: true, WorkOut: not null }))
            {
                var file = cart.File.ToArray();
                var at = image.Parts.First(part => part.Region == header.Table.Region).Start + entry.Offset;
                var mask = new byte[entry.Field.Length];
                entry.Field.Codec.Mask(mask);
                var own = Array.FindLastIndex(mask, bits => bits != 0);
                file[at + own] ^= (byte)(mask[own] & -mask[own]);
                var mended = OpenedExample.Mend(OpenedExample.Open(cart, file));
                Assert.Equal(cart.File, mended.Bytes.ToArray());
                Assert.Contains(mended.Changes, change => change.Name == entry.Field.Name);
            }
        }
    }

    [Fact]
    public void An_image_in_another_order_behind_a_prefix_stays_so()
    {
        var cart = ExampleCart.All["lantern-tide-md"];
        byte[] Swapped(byte[] bytes)
        {
            var swapped = new byte[bytes.Length];
            WordSwap.Swap16(bytes, swapped);
            return [.. new byte[CopierPrefix.Length], .. swapped];
        }

        var file = cart.File.ToArray();
        file[0x18E] ^= 0x40;
        Assert.Equal(Swapped(cart.File), OpenedExample.Mend(OpenedExample.Open(cart, Swapped(file))).Bytes.ToArray());
    }

    // A widely used C kit stores the exclusive or of all words (seen in images), and a program may check it.
    [Fact]
    public void A_checksum_of_another_known_rule_is_left_unless_named()
    {
        var cart = ExampleCart.All["lantern-tide-md"];
        var file = cart.File.ToArray();
        file[0x18E] = file[0x18F] = 0;
        var xor = WordXor.BigEndian16(file);
        (file[0x18E], file[0x18F]) = ((byte)(xor >> 8), (byte)xor);
        var image = OpenedExample.Open(cart, file);
        var change = Assert.Single(OpenedExample.Mend(image).Changes);
        Assert.NotNull(change.Left);
        Assert.Equal(file, OpenedExample.Mend(image).Bytes.ToArray());
        Assert.Equal(cart.File, OpenedExample.Mend(image, "checksum").Bytes.ToArray());
    }

    private static IEnumerable<(ChecksumRow Row, int Start)> Checksums(Cartwright.Inspection.OpenedImage image) =>
        from header in image.Cart.Headers
        where header.Table.Region is not null
        from entry in header.Checksums
        select (entry.Row, image.Parts.First(part => part.Region == header.Table.Region).Start + entry.Offset);
}
