using System.Runtime.CompilerServices;

namespace Cartwright.Ordering;

/// <summary>The checks every transform makes before it touches a byte. A failed one is a mistake in the calling code.</summary>
internal static class SpanGuard
{
    /// <summary>Throws unless the bytes are a whole number of units.</summary>
    public static void RequireMultiple(
        ReadOnlySpan<byte> source,
        int unit,
        [CallerArgumentExpression(nameof(source))] string name = "")
    {
        if (source.Length % unit != 0)
            throw new ArgumentException($"{source.Length} bytes are not a multiple of {unit}; pad first.", name);
    }

    /// <summary>Throws when the destination holds fewer bytes than needed; else gives just those bytes of it.</summary>
    public static Span<byte> RequireRoom(
        Span<byte> destination,
        long needed,
        [CallerArgumentExpression(nameof(destination))] string name = "") =>
        destination.Length >= needed
            ? destination[..(int)needed]
            : throw new ArgumentException($"{destination.Length} bytes are too few; {needed} are needed.", name);

    /// <summary>Throws when the spans share some bytes without being the same bytes.</summary>
    public static void RequireSameOrApart(
        ReadOnlySpan<byte> source,
        ReadOnlySpan<byte> destination,
        [CallerArgumentExpression(nameof(destination))] string name = "")
    {
        if (source.Overlaps(destination, out var offset) && offset != 0)
            throw new ArgumentException("Source and destination may be the same bytes, but not partly so.", name);
    }

    /// <summary>Throws when the spans share any byte.</summary>
    public static void RequireApart(
        ReadOnlySpan<byte> source,
        ReadOnlySpan<byte> destination,
        [CallerArgumentExpression(nameof(destination))] string name = "")
    {
        if (source.Overlaps(destination))
            throw new ArgumentException("The spans must not share bytes.", name);
    }
}
