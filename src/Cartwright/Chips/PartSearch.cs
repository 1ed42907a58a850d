using Cartwright.Manifests;

namespace Cartwright.Chips;

/// <summary>Decides whether a search word fits a part.</summary>
internal static class PartSearch
{
    /// <summary>True when the word is a piece of a name, maker, kind or package, or all of a size, supply or width.</summary>
    public static bool Matches(Part part, string word) => IsPieceOf(part, word) || IsWhole(part, word);

    private static bool IsPieceOf(Part part, string word)
    {
        if (Holds(part.Name, word) || Holds(part.Makers, word) || Holds(part.Packages, word) || Holds(PartWords.Kinds.Print(part.Kind), word))
            return true;
        foreach (var alias in part.Aliases)
        {
            if (Holds(alias, word))
                return true;
        }

        return false;
    }

    // Only whole sizes count: "4Mbit" must not find the 64 Mbit parts.
    private static bool IsWhole(Part part, string word) =>
        (ByteSize.TryParse(word, out var size) && size == part.CapacityBytes)
        || Same(word, PartWords.SupplyClasses.Print(part.Supply.Class))
        || (Same(word, "8-bit") && part.Supports(8))
        || (Same(word, "16-bit") && part.Supports(16))
        || (Same(word, "serial") && part.DataBus == PartDataBus.Serial);

    private static bool Holds(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
