namespace Cartwright.Chips;

/// <summary>How names of parts are compared: letter case, hyphens and blanks do not count.</summary>
internal static class PartName
{
    /// <summary>The name without what does not count.</summary>
    public static string Plain(string name) => string.Create(PlainLength(name), name, static (plain, name) =>
    {
        var at = 0;
        foreach (var letter in name)
        {
            if (Counts(letter))
                plain[at++] = char.ToUpperInvariant(letter);
        }
    });

    /// <summary>The part of an order code that names the chip, up to the first hyphen: <c>SST39SF040-70-4C-PHE</c> gives <c>SST39SF040</c>.</summary>
    public static string Stem(string orderCode)
    {
        var hyphen = orderCode.IndexOf('-', StringComparison.Ordinal);
        return hyphen < 0 ? orderCode : orderCode[..hyphen];
    }

    private static bool Counts(char letter) => letter is not ('-' or ' ');

    private static int PlainLength(string name)
    {
        var length = 0;
        foreach (var letter in name)
            length += Counts(letter) ? 1 : 0;
        return length;
    }
}
