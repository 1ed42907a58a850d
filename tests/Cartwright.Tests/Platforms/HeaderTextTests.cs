using Cartwright.Headers;
using Cartwright.Platforms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>What must hold of the text of every field of every platform.</summary>
public sealed class HeaderTextTests
{
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

    /// <summary>Fails unless the text of a field's bytes, written back, gives the bits the field owns; a row that owns none has nothing to write.</summary>
    internal static void AssertRestored(HeaderField field, byte[] bytes)
    {
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        if (!mask.AsSpan().ContainsAnyExcept((byte)0))
            return;

        var text = field.Codec.Read(bytes);
        var back = new byte[field.Length];
        Assert.Null(field.Codec.Write(text, back));
        for (var i = 0; i < field.Codec.Reach(bytes); i++)
            Assert.True((bytes[i] & mask[i]) == (back[i] & mask[i]), $"{field.Name} `{text}` of {Convert.ToHexString(bytes)} gave {Convert.ToHexString(back)}");
    }
}
