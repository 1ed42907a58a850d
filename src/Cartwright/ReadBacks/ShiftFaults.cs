using System.Collections.Immutable;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which the contents stand later or earlier than they should, or again and again.</summary>
internal static class ShiftFaults
{
    private static readonly string[] Holdings = ["mixed", "first", "last"];

    private const int Window = 16;
    private const int Windows = 12;
    private const int RichBytes = 5;
    private const int MostPlaces = 8;
    private const int LeastContent = 64;

    // Bytes in front are free to be anything: of a repeated image, all that is wrong in its first copy. No file's head is as long as that.
    private const int LongestPrefix = 1024;
    private const int LeastPartOfPrefix = 8;

    /// <summary>Rotated and repeated contents.</summary>
    public static IEnumerable<Hypothesis> Propose(ProofCase proof) => Rotations(proof).Concat(Repeats(proof)).Concat(SmallChips(proof));

    /// <summary>Contents behind a prefix.</summary>
    public static IEnumerable<Hypothesis> Prefixes(ProofCase proof)
    {
        var (expected, read) = (proof.Expected.Bytes, proof.ReadBytes);
        return from length in Shifts(expected, read).Where(static shift => shift > 0)
               where length <= Math.Min(LongestPrefix, expected.Length / LeastPartOfPrefix) && read.AsSpan(length).SequenceEqual(expected.AsSpan(0, expected.Length - length))
               let prefix = read[..length]
               select Hypothesis.Making(
                   Fault.Of(FaultKinds.PrefixLeftIn, [Of("length", length), .. prefix.AsSpan().ContainsAnyExcept((byte)0) ? new[] { Of("prefix", Convert.ToHexString(prefix)) } : []]),
                   image => [.. prefix, .. image.Bytes.AsSpan(0, image.Bytes.Length - length)]);
    }

    private static IEnumerable<Hypothesis> Rotations(ProofCase proof)
    {
        var (expected, read) = (proof.Expected.Bytes, proof.ReadBytes);
        return from shift in Shifts(expected, read)
               let turn = ((-shift % expected.Length) + expected.Length) % expected.Length
               where turn != 0 && read.AsSpan(0, expected.Length - turn).SequenceEqual(expected.AsSpan(turn)) && read.AsSpan(expected.Length - turn).SequenceEqual(expected.AsSpan(0, turn))
               select Hypothesis.Making(Fault.Of(FaultKinds.Rotated, Of("by", turn)), image => [.. image.Bytes.AsSpan(turn), .. image.Bytes.AsSpan(0, turn)]);
    }

    // How much later than in the image some windows of it stand in the read-back.
    private static ImmutableArray<int> Shifts(byte[] expected, byte[] read)
    {
        var shifts = new SortedSet<int>();
        for (var i = 0; i < Windows; i++)
        {
            if (RichWindow(expected, (int)((long)expected.Length * i / Windows)) is { } start)
            {
                Places(expected.AsSpan(start, Window), read, start, shifts);
            }
        }

        return [.. shifts];
    }

    private static void Places(ReadOnlySpan<byte> window, byte[] read, int start, SortedSet<int> shifts)
    {
        var from = 0;
        for (var place = 0; place < MostPlaces && read.AsSpan(from).IndexOf(window) is >= 0 and var at; place++)
        {
            shifts.Add(from + at - start);
            from += at + 1;
        }
    }

    private static int? RichWindow(byte[] bytes, int from)
    {
        for (var start = from; start + Window <= bytes.Length; start += Window)
        {
            if (IsRich(bytes.AsSpan(start, Window)))
            {
                return start;
            }
        }

        return null;
    }

    private static bool IsRich(ReadOnlySpan<byte> window)
    {
        var kinds = 0;
        for (var i = 0; i < window.Length; i++)
        {
            kinds += window[..i].Contains(window[i]) ? 0 : 1;
        }

        return kinds >= RichBytes;
    }

    private static IEnumerable<Hypothesis> Repeats(ProofCase proof) =>
        from period in Periods(proof.ReadBytes)
        where proof.Expected.Bytes.AsSpan(0, period).SequenceEqual(proof.ReadBytes.AsSpan(0, period))
        select Hypothesis.Moving(Fault.Of(FaultKinds.Repeated, Of("period", period)), b => b % period);

    // The shortest period of whole powers of two, and the shortest of all when it is another.
    private static IEnumerable<int> Periods(byte[] read)
    {
        var powers = Halves(read.Length).Where(period => IsPeriod(read, period)).ToList();
        if (powers.Count > 0)
        {
            yield return powers[^1];
        }

        var start = Math.Min(Window, read.Length / 2);
        var next = read.AsSpan(start).IndexOf(read.AsSpan(0, Math.Min(LeastContent, read.Length / 2)));
        if (next >= 0 && next + start < read.Length && IsPeriod(read, next + start) && !powers.Contains(next + start))
        {
            yield return next + start;
        }
    }

    internal static bool IsPeriod(byte[] read, int period) => read.AsSpan(period).SequenceEqual(read.AsSpan(0, read.Length - period));

    internal static IEnumerable<int> Halves(int length)
    {
        for (var size = length; size % 2 == 0 && size > 1;)
        {
            size /= 2;
            yield return size;
        }
    }

    private static IEnumerable<Hypothesis> SmallChips(ProofCase proof) =>
        from size in Halves(proof.ReadBytes.Length).TakeWhile(size => IsPeriod(proof.ReadBytes, size))
        where size >= proof.Expected.Shape.Bytes
        from holds in Holdings
        select Hypothesis.Making(Fault.Of(FaultKinds.ChipTooSmall, Of("size", size), Of("holds", holds)), image => SmallChip(image.Bytes, size, holds));

    private static byte[] SmallChip(byte[] image, int size, string holds)
    {
        var cells = new byte[size];
        cells.AsSpan().Fill(0xFF);
        for (var start = holds == "last" ? image.Length - size : 0; start < (holds == "first" ? size : image.Length); start += size)
        {
            for (var b = 0; b < size; b++)
            {
                cells[b] &= image[start + b];
            }
        }

        var read = new byte[image.Length];
        for (var start = 0; start < read.Length; start += size)
        {
            cells.CopyTo(read, start);
        }

        return read;
    }
}
