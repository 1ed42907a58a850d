using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Chips;

/// <summary>Reads the figures of the parts table.</summary>
internal static class PartFigures
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>A number of bytes above zero.</summary>
    public static bool TryBytes(string text, out long bytes) =>
        long.TryParse(text, NumberStyles.None, Invariant, out bytes) && bytes > 0;

    /// <summary><c>min-max</c> in volts, a remark may follow after a blank.</summary>
    public static bool TryVolts(string text, out (double Min, double Max) volts)
    {
        volts = default;
        var range = text.AsSpan();
        if (range.IndexOf(' ') is >= 0 and var remark)
            range = range[..remark];
        var dash = range.IndexOf('-');
        return dash > 0
            && double.TryParse(range[..dash], NumberStyles.AllowDecimalPoint, Invariant, out volts.Min)
            && double.TryParse(range[(dash + 1)..], NumberStyles.AllowDecimalPoint, Invariant, out volts.Max)
            && volts.Min <= volts.Max;
    }

    /// <summary><c>count*bytes</c> groups joined by <c>;</c>, or blank.</summary>
    public static bool TrySectorMap(string text, out ImmutableArray<SectorGroup> map)
    {
        map = [];
        if (text.Length == 0)
            return true;
        var groups = ImmutableArray.CreateBuilder<SectorGroup>();
        foreach (var range in text.AsSpan().Split(';'))
        {
            var group = text.AsSpan(range);
            var star = group.IndexOf('*');
            if (star < 0 || !TryCount(group[..star], out var count) || !TryCount(group[(star + 1)..], out var bytes))
                return false;
            groups.Add(new SectorGroup(count, bytes));
        }

        map = groups.DrainToImmutable();
        return true;
    }

    /// <summary>Access times outside brackets, in nanoseconds, joined by <c>;</c>. Cycle times are no access times and are left out.</summary>
    public static bool TryAccess(string text, out ImmutableArray<int> nanoseconds)
    {
        nanoseconds = [];
        var grades = ImmutableArray.CreateBuilder<int>();
        var rest = text.AsSpan();
        while (!rest.IsEmpty)
        {
            var end = rest.IndexOfAny(';', '(');
            var item = (end < 0 ? rest : rest[..end]).Trim();
            if (TryCount(item, out var grade))
                AddOnce(grades, grade);
            else if (!item.IsEmpty && !item.EndsWith(" cycle", StringComparison.Ordinal))
                return false;
            rest = end < 0 ? default : rest[end..];
            if (!TrySkipDelimiter(ref rest))
                return false;
        }

        grades.Sort();
        nanoseconds = grades.DrainToImmutable();
        return true;
    }

    /// <summary>Blank, <c>unlimited</c>, <c>n/a</c>, or figures such as <c>1000 or 10000</c> and <c>1e12</c> with the lowest first.</summary>
    public static bool TryEndurance(string text, out PartEndurance endurance)
    {
        endurance = new PartEndurance(text, FewestCycles: null, IsUnlimited: text == "unlimited");
        if (endurance.IsUnlimited || text is "" or "n/a")
            return true;
        var blank = text.IndexOf(' ', StringComparison.Ordinal);
        var first = blank < 0 ? text : text[..blank];
        const NumberStyles figure = NumberStyles.AllowExponent | NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(first, figure, Invariant, out var cycles) || cycles is < 1 or > long.MaxValue)
            return false;
        endurance = endurance with { FewestCycles = (long)cycles };
        return true;
    }

    /// <summary>Names joined by <c>;</c>, or blank.</summary>
    public static ImmutableArray<string> Names(string text) =>
        text.Length == 0 ? [] : ImmutableArray.Create(text.Split(';'));

    private static void AddOnce(ImmutableArray<int>.Builder grades, int grade)
    {
        if (!grades.Contains(grade))
            grades.Add(grade);
    }

    private static bool TryCount(ReadOnlySpan<char> text, out int count) =>
        int.TryParse(text, NumberStyles.None, Invariant, out count) && count > 0;

    // Steps over one ';', or over a remark in brackets; false when the bracket is never closed.
    private static bool TrySkipDelimiter(ref ReadOnlySpan<char> rest)
    {
        var last = rest.IsEmpty || rest[0] == ';' ? 0 : rest.IndexOf(')');
        if (last < 0)
            return false;
        rest = rest.IsEmpty ? rest : rest[(last + 1)..];
        return true;
    }
}
