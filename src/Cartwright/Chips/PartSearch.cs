using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Chips;

/// <summary>Decides whether a search word fits a part.</summary>
internal static class PartSearch
{
    /// <summary>True when the word is a piece of a name, maker, kind or package, or all of a size, supply, access time, package or width.</summary>
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
        (ByteSize.TryParse(word.TrimEnd('+'), out var size) && (size == part.CapacityBytes || (word.EndsWith('+') && size < part.CapacityBytes)))
        || (Figure(word, "V") is { } volts && !IsSupplyClass(word) && part.Supply.Covers(volts))
        || (Figure(word, "ns") is { } nanoseconds && !part.AccessNanoseconds.IsEmpty && part.AccessNanoseconds[0] <= nanoseconds)
        || ComesIn(part, word)
        || Same(word, PartWords.SupplyClasses.Print(part.Supply.Class))
        || (Same(word, "8-bit") && part.Supports(8))
        || (Same(word, "16-bit") && part.Supports(16))
        || (Same(word, "serial") && part.DataBus == PartDataBus.Serial);

    private static bool IsSupplyClass(string word) =>
        PartWords.SupplyClasses.Values.Any(supply => Same(word, PartWords.SupplyClasses.Print(supply)));

    private static double? Figure(string word, string unit) =>
        word.EndsWith(unit, StringComparison.OrdinalIgnoreCase)
        && double.TryParse(word.AsSpan(0, word.Length - unit.Length), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;

    // "DIP32" is the "32-pin DIP/PLCC/TSOP" of the table.
    private static bool ComesIn(Part part, string word)
    {
        var letters = word.TrimEnd("0123456789".ToCharArray()).TrimEnd('-');
        var pins = word.AsSpan(word.AsSpan().TrimEnd("0123456789").Length);
        foreach (var package in part.Packages.Split(", "))
        {
            if (letters.Length > 1 && pins.Length > 0 && package.StartsWith($"{pins}-pin", StringComparison.Ordinal) && Holds(package, letters))
                return true;
        }

        return false;
    }

    private static bool Holds(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
