using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Cartwright.Plans;

/// <summary>Compares what cells hold with what they are to hold. Spans of one length.</summary>
internal static class CellCompare
{
    /// <summary>What a blank cell of flash and EPROM reads.</summary>
    public const byte Erased = 0xFF;

    // In bytes, on S29GL-S parts: from memory.
    private const int CorrectedUnit = 16;

    /// <summary>True when some bit is 0 and is to be 1, which only an erase can do.</summary>
    public static bool MustRise(ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted)
    {
        var olds = MemoryMarshal.Cast<byte, Vector256<byte>>(old);
        var news = MemoryMarshal.Cast<byte, Vector256<byte>>(wanted);
        for (var i = 0; i < olds.Length; i++)
        {
            if (Vector256.AndNot(news[i], olds[i]) != Vector256<byte>.Zero)
            {
                return true;
            }
        }

        for (var i = olds.Length * Vector256<byte>.Count; i < old.Length; i++)
        {
            if ((wanted[i] & ~old[i]) != 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Number of units that differ.</summary>
    /// <param name="old">What the cells hold.</param>
    /// <param name="wanted">What they are to hold.</param>
    /// <param name="unit">Bytes of a unit: 1 or 2.</param>
    public static int CountDifferent(ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted, int unit) => unit == 1
        ? CountDifferent(old, wanted)
        : CountDifferent(MemoryMarshal.Cast<byte, ushort>(old), MemoryMarshal.Cast<byte, ushort>(wanted));

    /// <summary>Number of units that are not erased.</summary>
    /// <param name="wanted">What the cells are to hold.</param>
    /// <param name="unit">Bytes of a unit: 1 or 2.</param>
    public static int CountNotErased(ReadOnlySpan<byte> wanted, int unit)
    {
        if (unit == 1)
        {
            return wanted.Length - wanted.Count(Erased);
        }

        var words = MemoryMarshal.Cast<byte, ushort>(wanted);
        return words.Length - words.Count(ushort.MaxValue);
    }

    /// <summary>True when some unit of error correction changes that is not blank.</summary>
    public static bool IsProgrammedTwice(ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted)
    {
        for (var at = 0; at < old.Length; at += CorrectedUnit)
        {
            var unit = old.Slice(at, Math.Min(CorrectedUnit, old.Length - at));
            if (unit.ContainsAnyExcept(Erased) && !unit.SequenceEqual(wanted.Slice(at, unit.Length)))
            {
                return true;
            }
        }

        return false;
    }

    private static int CountDifferent<T>(ReadOnlySpan<T> old, ReadOnlySpan<T> wanted)
        where T : unmanaged, INumber<T>
    {
        var olds = MemoryMarshal.Cast<T, Vector256<T>>(old);
        var news = MemoryMarshal.Cast<T, Vector256<T>>(wanted);
        var equal = 0;
        for (var i = 0; i < olds.Length; i++)
        {
            equal += BitOperations.PopCount(Vector256.Equals(olds[i], news[i]).ExtractMostSignificantBits());
        }

        for (var i = olds.Length * Vector256<T>.Count; i < old.Length; i++)
        {
            equal += old[i] == wanted[i] ? 1 : 0;
        }

        return old.Length - equal;
    }
}
