using System.Numerics;

namespace Cartwright.ReadBacks;

/// <summary>Whether wrong bits lie as chance alone throws them: on every line, every address, every level alike.</summary>
internal sealed class Scatter
{
    // In standard deviations, and a few bits more where so few are expected that these mean little.
    private const double Widest = 5.5;
    private const int Few = 4;

    private readonly ushort[] _expected;
    private readonly WordShape _shape;
    private readonly int _addressLines;
    private readonly bool _zerosOnly;
    private readonly long[] _byLine;
    private readonly long[] _byAddress;
    private long _errors;
    private long _atOnes;
    private long _atChanges;
    private long _together;

    private Scatter(ushort[] expected, WordShape shape, int addressLines, bool zerosOnly)
    {
        (_expected, _shape, _addressLines, _zerosOnly) = (expected, shape, addressLines, zerosOnly);
        _byLine = new long[shape.Width];
        _byAddress = new long[addressLines];
    }

    /// <summary>Whether the wrong bits of some reads are scattered.</summary>
    /// <param name="expected">The words they should be.</param>
    /// <param name="shape">Their shape.</param>
    /// <param name="addressLines">Address lines that count them.</param>
    /// <param name="zerosOnly">True where only zeros can go wrong.</param>
    /// <param name="wrong">Of each read the wrong bits, word by word.</param>
    public static bool IsEven(ushort[] expected, WordShape shape, int addressLines, bool zerosOnly, params IReadOnlyCollection<ushort[]> wrong)
    {
        var scatter = new Scatter(expected, shape, addressLines, zerosOnly);
        foreach (var read in wrong)
        {
            scatter.Add(read);
        }

        return scatter.IsEven(wrong.Count);
    }

    private void Add(ushort[] wrong)
    {
        for (var a = 0; a < wrong.Length; a++)
        {
            if (wrong[a] != 0)
            {
                Add(a, wrong[a]);
            }
        }
    }

    private void Add(int a, int wrong)
    {
        var count = BitOperations.PopCount((uint)wrong);
        _errors += count;
        _together += count > 1 ? 1 : 0;
        _atOnes += BitOperations.PopCount((uint)(wrong & _expected[a]));
        _atChanges += BitOperations.PopCount((uint)(wrong & (_expected[a] ^ _expected[a == 0 ? ^1 : a - 1])));
        for (var bits = (uint)wrong; bits != 0; bits &= bits - 1)
        {
            _byLine[BitOperations.TrailingZeroCount(bits)]++;
        }

        for (var k = 0; k < _addressLines; k++)
        {
            _byAddress[k] += (a >> k & 1) * count;
        }
    }

    private bool IsEven(int reads)
    {
        var all = LineCounts.Of(_expected, _shape.Width, _addressLines);
        var room = all.Ones.Select(ones => _zerosOnly ? all.Words - ones : all.Words).ToArray();
        var whole = (double)room.Sum();
        var rate = whole == 0 ? 0 : _errors / whole / reads;
        return IsFair(_byLine, room, whole)
            && IsFair(_byAddress, [.. Enumerable.Range(0, _addressLines).Select(k => RoomAtOne(all, k))], whole)
            && (_zerosOnly || IsFair(_atOnes, all.Ones.Sum() / whole))
            && IsFair(_atChanges, Changes() / whole)
            && _together <= (Widest * Math.Sqrt(Pairs(rate, reads))) + Pairs(rate, reads) + Few;
    }

    private long RoomAtOne(LineCounts all, int k)
    {
        var (words, ones) = (0L, 0L);
        for (var i = 0; i < _shape.Width; i++)
        {
            words += all.Words / 2;
            ones += all.Joint[i][k];
        }

        return _zerosOnly ? words - ones : words;
    }

    private long Changes()
    {
        var changes = 0L;
        var before = _expected[^1];
        foreach (var word in _expected)
        {
            changes += BitOperations.PopCount((uint)((word ^ before) & (_zerosOnly ? ~word & _shape.Ones : _shape.Ones)));
            before = word;
        }

        return changes;
    }

    // Words in which chance spoils two bits or more.
    private double Pairs(double rate, int reads)
    {
        var pairs = _shape.Width * (_shape.Width - 1) / 2.0;
        return (double)_expected.Length * reads * pairs * rate * rate;
    }

    private bool IsFair(long[] errors, long[] room, double whole)
    {
        for (var i = 0; i < errors.Length; i++)
        {
            if (!IsFair(errors[i], room[i] / whole))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsFair(long errors, double share) =>
        Math.Abs(errors - (_errors * share)) <= (Widest * Math.Sqrt(_errors * share * Math.Max(0, 1 - share))) + Few;
}
