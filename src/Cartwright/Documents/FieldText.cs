using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Documents;

/// <summary>Says in words what a row of a header table holds.</summary>
internal static class FieldText
{
    /// <summary>A name or value as Markdown prints it: in backticks.</summary>
    /// <param name="text">The name or value.</param>
    public static string Code(string text) => $"`{text}`";

    /// <summary>Length in bytes, and the bits where the field does not own all of them.</summary>
    /// <param name="field">The field.</param>
    public static string Bytes(HeaderField field)
    {
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        var length = field.Length.ToString(CultureInfo.InvariantCulture);
        return !mask.AsSpan().ContainsAnyExcept((byte)0xFF) ? length
            : !mask.AsSpan().ContainsAnyExcept((byte)0) ? length + ", no bits of its own"
            : length + (System.Numerics.BitOperations.IsPow2(mask[0]) && mask.Length == 1 ? ", bit " : ", bits ")
                + (mask.Length == 1 ? Bits(mask[0]) : string.Join(" and ", mask.Select(Within).OfType<string>()));
    }

    /// <summary>Where the value comes from when the manifest's <c>header</c> does not state it.</summary>
    /// <param name="field">The field.</param>
    /// <param name="container">True in a container, which no program's bytes can fill.</param>
    public static string LeftOut(HeaderField field, bool container)
    {
        var ways = new List<string>();
        if (field.FromCart is { } key)
        {
            ways.Add(Code("cart." + (key == CartKey.Title ? "title" : "revision")));
        }

        if (field.WorkOut is not null)
        {
            ways.Add("worked out");
        }

        if (field.DefaultFrom is not null)
        {
            ways.Add("from other fields");
        }

        if (field.Default is { } text)
        {
            ways.Add(text.Length == 0 ? "blank" : Code(text));
        }

        if (ways.Count == 0)
        {
            ways.Add(field.Required ? "nothing" : container ? "zero" : "the program's bytes");
        }

        return string.Join(", else ", ways) + (field.Required ? " (required)" : "");
    }

    /// <summary>What may be written, without the words where they are listed.</summary>
    /// <param name="codec">The field's codec.</param>
    public static string Value(FieldCodec codec)
    {
        var words = string.Join(", ", codec.Names.Select(static row => row.Name));
        return words.Length == 0 ? codec.Expected : codec.Expected
            .Replace("one of " + words, "one of the words below", StringComparison.Ordinal)
            .Replace("one of the sizes " + words, "one of the sizes below", StringComparison.Ordinal);
    }

    private static string? Within(byte mask, int index) => mask == 0 ? null : $"{Bits(mask)} of byte {index.ToString(CultureInfo.InvariantCulture)}";

    // 0x1C as "4-2", 0x81 as "7, 0".
    private static string Bits(byte mask)
    {
        var runs = new List<string>();
        for (var high = 7; high >= 0; high--)
        {
            if ((mask >> high & 1) != 0)
            {
                var low = high;
                while (low > 0 && (mask >> (low - 1) & 1) != 0)
                {
                    low--;
                }

                runs.Add(low == high ? $"{high}" : $"{high}-{low}");
                high = low;
            }
        }

        return string.Join(", ", runs);
    }
}
