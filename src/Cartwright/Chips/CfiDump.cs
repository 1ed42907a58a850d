namespace Cartwright.Chips;

/// <summary>Finds the query bytes in a dump: they may be spaced as the bus was, doubled, and begin at offset 0 or at the letters QRY.</summary>
internal sealed class CfiDump
{
    // Offset of the letters QRY in the query, in units of the chip's widest bus.
    private const int Signature = 0x10;

    private readonly ReadOnlyMemory<byte> _bytes;
    private readonly int _stride;
    private readonly int _phase;
    private readonly int _base;

    private CfiDump(ReadOnlyMemory<byte> bytes, int stride, int phase, int start)
    {
        (_bytes, _stride, _phase, _base) = (bytes, stride, phase, start);
    }

    /// <summary>How the bytes lie in the dump, a few words.</summary>
    public string Spacing => _stride == 1 ? "single bytes"
        : _phase == 1 ? "16-bit words, high byte first"
        : _bytes.Span[((Signature - _base) * _stride) + 1] == 'Q' ? "16-bit words, each byte doubled"
        : "16-bit words, low byte first";

    /// <summary>The dump, when it holds the letters QRY at a place where they can be.</summary>
    public static CfiDump? Find(ReadOnlyMemory<byte> bytes)
    {
        ReadOnlySpan<(int Stride, int Phase)> spacings = [(1, 0), (2, 0), (2, 1)];
        foreach (var start in (ReadOnlySpan<int>)[0, Signature])
        {
            foreach (var (stride, phase) in spacings)
            {
                var dump = new CfiDump(bytes, stride, phase, start);
                if (dump.Holds(Signature, "QRY"))
                {
                    return dump;
                }
            }
        }

        return null;
    }

    /// <summary>True when the query has these letters at an offset.</summary>
    public bool Holds(int offset, string letters)
    {
        for (var i = 0; i < letters.Length; i++)
        {
            if (Byte(offset + i) != letters[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A byte of the query; null when the dump ends before it.</summary>
    public int? Byte(int offset)
    {
        var at = ((offset - _base) * (long)_stride) + _phase;
        return at >= 0 && at < _bytes.Length ? _bytes.Span[(int)at] : null;
    }

    /// <summary>Two bytes of the query, the lower first; null when the dump ends before them.</summary>
    public int? Word(int offset) => Byte(offset) | (Byte(offset + 1) << 8);
}
