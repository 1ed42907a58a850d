using System.Buffers.Binary;

namespace Cartwright.Patching;

/// <summary>
/// Reads a patch, or a section of one, from front to back. The first thing that cannot be read is logged and fails the cursor; what is
/// read from then on is 0, so that callers may look at <see cref="HasFailed"/> once after several reads.
/// </summary>
internal ref struct PatchCursor
{
    // Ten groups of 7 bits hold every number of 64 bits.
    private const int LongestNumber = 10;

    private readonly ReadOnlySpan<byte> _patch;
    private readonly PatchLog _log;
    private readonly string _whole;

    /// <summary>Begins at a byte.</summary>
    /// <param name="patch">The patch from its first byte to the end of what may be read.</param>
    /// <param name="start">The first byte to read.</param>
    /// <param name="log">Where findings go.</param>
    /// <param name="whole">What is read, in words.</param>
    public PatchCursor(ReadOnlySpan<byte> patch, int start, PatchLog log, string whole = "The patch")
    {
        _patch = patch;
        _log = log;
        _whole = whole;
        Position = start;
    }

    /// <summary>The next byte's offset in the patch.</summary>
    public int Position { get; private set; }

    /// <summary>True once something could not be read.</summary>
    public bool HasFailed { get; private set; }

    /// <summary>Bytes left.</summary>
    public readonly int Left => _patch.Length - Position;

    /// <summary>True when nothing is left, or nothing more can be read.</summary>
    public readonly bool IsAtEnd => HasFailed || Left == 0;

    /// <summary>Steps over bytes.</summary>
    /// <param name="count">How many, as a patch states it.</param>
    /// <param name="what">What they are, in words.</param>
    /// <returns>The offset of the first of them.</returns>
    public int Skip(ulong count, string what)
    {
        if (!HasFailed && count > (ulong)Left)
        {
            Fail(PatchFindings.EndsEarly, $"{_whole} ends {PatchWords.Size(Left)} after the beginning of {what}", PatchWords.Size(count));
        }

        if (HasFailed) return Position;
        var start = Position;
        Position += (int)count;
        return start;
    }

    /// <summary>One byte.</summary>
    public byte Byte(string what)
    {
        var at = Skip(1, what);
        return HasFailed ? (byte)0 : _patch[at];
    }

    /// <summary>Four bytes, the highest first.</summary>
    public uint BigEndian32(string what)
    {
        var at = Skip(sizeof(uint), what);
        return HasFailed ? 0 : BinaryPrimitives.ReadUInt32BigEndian(_patch[at..]);
    }

    /// <summary>A BPS number: low 7 bits first, bit 7 set on the last byte, one taken off before each further group.</summary>
    public ulong BpsNumber(string what)
    {
        var start = Position;
        var (value, bias) = (0UL, 0UL);
        for (var shift = 0; ; shift += 7)
        {
            var next = Byte(what);
            var group = (UInt128)(uint)(next & 0x7F) << shift;
            if (HasFailed) return 0;
            var sum = value + group + bias;
            if (shift >= 7 * LongestNumber || sum > ulong.MaxValue) return TooLong(start, what);
            value = (ulong)sum;
            if ((next & 0x80) != 0) return value;
            bias = shift < 63 ? 1UL << (shift + 7) : 0;
        }
    }

    /// <summary>A VCDIFF integer: high 7 bits first, bit 7 set on every byte but the last (RFC 3284, section 2).</summary>
    public long VcdiffNumber(string what)
    {
        var start = Position;
        var value = 0L;
        for (var count = 1; ; count++)
        {
            var next = Byte(what);
            if (HasFailed) return 0;
            if (count > LongestNumber || value > long.MaxValue >> 7) return (long)TooLong(start, what);
            value = (value << 7) | (uint)(next & 0x7F);
            if ((next & 0x80) == 0) return value;
        }
    }

    private ulong TooLong(int start, string what)
    {
        Position = start;
        Fail(PatchFindings.NumberTooLong, $"The number that gives {what} does not fit into 64 bits");
        return 0;
    }

    private void Fail(Findings.FindingRule rule, string message, string? expected = null)
    {
        _log.Add(rule, Position, message, expected);
        HasFailed = true;
    }
}
