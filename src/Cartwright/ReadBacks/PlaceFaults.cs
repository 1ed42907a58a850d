using System.Collections.Immutable;
using System.Numerics;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which some places are wrong and all others right.</summary>
internal static class PlaceFaults
{
    private static readonly string[] Levels = ["low", "high"];

    private const int LargestSector = 256 << 10;
    private const int SmallestSector = 64;
    private const int MostBlocks = 256;
    private static readonly ImmutableArray<int> BlockSteps = [512, 256, 128, 64];

    public static IEnumerable<Hypothesis> Propose(ProofCase proof)
    {
        var (expected, read) = (proof.Expected.Bytes, proof.ReadBytes);
        var first = expected.AsSpan().CommonPrefixLength(read);
        if (first == read.Length)
        {
            return [];
        }

        var last = read.Length - 1;
        while (expected[last] == read[last])
        {
            last--;
        }

        return [.. Stopped(read, first), .. Missing(proof, first, last), .. Unchanged(proof), .. Unselected(proof, first, last), .. TwoChips(proof, first, last)];
    }

    private static IEnumerable<Hypothesis> Stopped(byte[] read, int first)
    {
        var end = read.AsSpan().LastIndexOfAnyExcept(WordImage.Erased) + 1;
        if (end <= first)
        {
            var at = Roundest(end, first);
            yield return Hypothesis.Making(Fault.Of(FaultKinds.StoppedEarly, Of("at", at)), image => Erase(image.Bytes, [(at, image.Bytes.Length - at)]));
        }
    }

    /// <summary>Of the numbers from least to most the one with the most zeros at its end.</summary>
    private static int Roundest(int least, int most)
    {
        if (least == 0)
        {
            return 0;
        }

        var step = 1 << 30;
        while (most / step * step < least)
        {
            step >>= 1;
        }

        return most / step * step;
    }

    private static byte[] Erase(byte[] image, IEnumerable<(int Start, int Length)> blocks)
    {
        var bytes = (byte[])image.Clone();
        foreach (var (start, length) in blocks)
        {
            bytes.AsSpan(start, length).Fill(WordImage.Erased);
        }

        return bytes;
    }

    private static IEnumerable<Hypothesis> Missing(ProofCase proof, int first, int last)
    {
        foreach (var step in BlockSteps)
        {
            if (Blocks(proof, first, last, step) is { } blocks)
            {
                return [Hypothesis.Making(Fault.Of(FaultKinds.BlocksMissing, Of("blocks", blocks)), image => Erase(image.Bytes, blocks))];
            }
        }

        return [];
    }

    // Blocks of this step that hold wrong bytes, all of them erased; joined where they touch.
    private static List<(int Start, int Length)>? Blocks(ProofCase proof, int first, int last, int step)
    {
        var blocks = new List<(int Start, int Length)>();
        for (var start = first / step * step; start <= last; start += step)
        {
            var length = Math.Min(step, proof.ReadBytes.Length - start);
            var read = proof.ReadBytes.AsSpan(start, length);
            if (read.SequenceEqual(proof.Expected.Bytes.AsSpan(start, length)))
            {
                continue;
            }

            if (read.ContainsAnyExcept(WordImage.Erased) || blocks.Count > MostBlocks)
            {
                return null;
            }

            if (blocks is [.., var before] && before.Start + before.Length == start)
            {
                blocks[^1] = (before.Start, before.Length + length);
            }
            else
            {
                blocks.Add((start, length));
            }
        }

        return blocks.Count > MostBlocks ? null : blocks;
    }

    private static IEnumerable<Hypothesis> Unchanged(ProofCase proof)
    {
        if (proof.Request.OldContent is not { } old || old.Length != proof.ReadBytes.Length)
        {
            return [];
        }

        for (var size = Math.Min(LargestSector, old.Length); size >= SmallestSector; size /= 2)
        {
            if (old.Length % size == 0 && Sectors(proof, old, size) is { } sectors)
            {
                return [Hypothesis.Making(Fault.Of(FaultKinds.SectorsUnchanged, Of("sectorSize", size), Of("sectors", sectors)), image => Keep(image.Bytes, old, size, sectors))];
            }
        }

        return [];
    }

    private static List<int>? Sectors(ProofCase proof, byte[] old, int size)
    {
        var sectors = new List<int>();
        for (var sector = 0; sector < old.Length / size; sector++)
        {
            var read = proof.ReadBytes.AsSpan(sector * size, size);
            if (!read.SequenceEqual(proof.Expected.Bytes.AsSpan(sector * size, size)))
            {
                if (!read.SequenceEqual(old.AsSpan(sector * size, size)))
                {
                    return null;
                }

                sectors.Add(sector);
            }
        }

        return sectors;
    }

    private static byte[] Keep(byte[] image, byte[] old, int size, List<int> sectors)
    {
        var bytes = (byte[])image.Clone();
        foreach (var sector in sectors)
        {
            old.AsSpan(sector * size, size).CopyTo(bytes.AsSpan(sector * size));
        }

        return bytes;
    }

    /// <summary>The smallest block that holds both places, and that a decoder of whole address lines could select.</summary>
    internal static (int Start, int Length) Around(int first, int last)
    {
        var length = 1 << (first == last ? 0 : BitOperations.Log2((uint)(first ^ last)) + 1);
        return (first / length * length, length);
    }

    private static IEnumerable<Hypothesis> Unselected(ProofCase proof, int first, int last)
    {
        var unit = proof.Expected.Shape.Bytes;
        var (start, length) = Around(first, last);
        (start, length) = (start / unit * unit, Math.Max(unit, length));
        if (start + length > proof.ReadBytes.Length || length == proof.ReadBytes.Length)
        {
            yield break;
        }

        foreach (var shows in (string[])["ones", "zeros", "address"])
        {
            if (proof.Read.AsSpan(start / unit, length / unit).SequenceEqual(Shown(shows, start / unit, length / unit, proof.Expected.Shape.Ones)))
            {
                yield return new Hypothesis([Fault.Of(FaultKinds.NotSelectedRange, Of("start", start), Of("length", length), Of("shows", shows))], image =>
                {
                    var words = (ushort[])image.Words.Clone();
                    Shown(shows, start / unit, length / unit, image.Shape.Ones).CopyTo(words, start / unit);
                    return words;
                });
            }
        }
    }

    private static ushort[] Shown(string shows, int start, int count, ushort ones)
    {
        var words = new ushort[count];
        for (var i = 0; i < count; i++)
        {
            words[i] = shows switch { "ones" => ones, "zeros" => (ushort)0, _ => (ushort)((start + i) & ones) };
        }

        return words;
    }

    private static IEnumerable<Hypothesis> TwoChips(ProofCase proof, int first, int last)
    {
        var (start, length) = Around(first, last);
        return from other in proof.Request.OtherChips
               where start + length <= proof.ReadBytes.Length && start + length <= other.Bytes.Length
               from wins in Levels
               where Both(proof.Expected.Bytes, other.Bytes, start, length, wins).AsSpan().SequenceEqual(proof.ReadBytes)
               select Hypothesis.Making(
                   Fault.Of(FaultKinds.TwoChipsEnabled, Of("start", start), Of("length", length), Of("image", other.Name), Of("wins", wins)),
                   image => Both(image.Bytes, other.Bytes, start, length, wins));
    }

    private static byte[] Both(byte[] image, byte[] other, int start, int length, string wins)
    {
        var bytes = (byte[])image.Clone();
        for (var b = start; b < start + length; b++)
        {
            bytes[b] = wins == "low" ? (byte)(bytes[b] & other[b]) : (byte)(bytes[b] | other[b]);
        }

        return bytes;
    }
}
