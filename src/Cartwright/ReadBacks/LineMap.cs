using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Moves the bits of a value, a byte of it at a time.</summary>
internal sealed class LineMap
{
    private const int Slice = 256;
    private readonly uint[] _tables = new uint[4 * Slice];

    /// <summary>Bit k of a value goes to bit <c>to[k]</c>.</summary>
    public LineMap(ImmutableArray<int> to)
    {
        To = to;
        for (var k = 0; k < to.Length; k++)
        {
            for (var part = 0; part < Slice; part++)
            {
                _tables[((k >> 3) * Slice) + part] |= ((uint)part >> (k & 7) & 1) << to[k];
            }
        }
    }

    public ImmutableArray<int> To { get; }

    public LineMap Inverse()
    {
        var from = new int[To.Length];
        for (var k = 0; k < To.Length; k++)
        {
            from[To[k]] = k;
        }

        return new LineMap([.. from]);
    }

    public uint Apply(uint value) =>
        _tables[value & 0xFF] | _tables[Slice + ((value >> 8) & 0xFF)] | _tables[(2 * Slice) + ((value >> 16) & 0xFF)] | _tables[(3 * Slice) + (value >> 24)];
}
