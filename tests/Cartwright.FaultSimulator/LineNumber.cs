using System.Globalization;

namespace Cartwright.FaultSimulator;

/// <summary>The number in a line's name.</summary>
internal static class LineNumber
{
    public static int Of(string line) => int.Parse(line.AsSpan(1), CultureInfo.InvariantCulture);
}
