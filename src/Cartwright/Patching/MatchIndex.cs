using System.Buffers.Binary;
using System.Numerics;

namespace Cartwright.Patching;

/// <summary>Finds earlier places of bytes that begin alike: a hash of eight bytes leads to the places of that hash, the last one added first.</summary>
/// <remarks>Only every <see cref="Stride"/>th place is kept; whoever looks up every place still meets each long match somewhere inside it.</remarks>
internal sealed class MatchIndex
{
    /// <summary>Bytes that have to be alike.</summary>
    public const int KeySize = sizeof(ulong);

    private const int LeastBits = 10;
    private const int MostBits = 22;

    private readonly int _shift;
    private readonly int[] _heads;
    private readonly int[] _links;

    /// <summary>Makes an empty index.</summary>
    /// <param name="length">Bytes to be indexed.</param>
    public MatchIndex(int length)
    {
        Stride = length switch { <= 0x40_0000 => 1, <= 0x100_0000 => 2, _ => 4 };
        var bits = Math.Clamp(BitOperations.Log2((uint)(length / Stride) | 1) + 1, LeastBits, MostBits);
        _shift = 64 - bits;
        _heads = new int[1 << bits];
        _links = new int[(length / Stride) + 1];
        Array.Fill(_heads, -1);
    }

    /// <summary>Only places that are a multiple of it are kept.</summary>
    public int Stride { get; }

    /// <summary>Adds a place, unless it repeats the place before it: in a long run of one pattern the first place gives the longest match.</summary>
    /// <param name="bytes">All bytes.</param>
    /// <param name="at">The place; a multiple of <see cref="Stride"/> with a whole key behind it.</param>
    public void Add(ReadOnlySpan<byte> bytes, int at)
    {
        var key = Key(bytes, at);
        if (at >= Stride && key == Key(bytes, at - Stride)) return;
        ref var head = ref _heads[Slot(key)];
        _links[at / Stride] = head;
        head = at;
    }

    /// <summary>The first place whose key may be that of the given bytes; -1 for none.</summary>
    public int First(ReadOnlySpan<byte> bytes, int at) => _heads[Slot(Key(bytes, at))];

    /// <summary>The next such place; -1 for none.</summary>
    public int Next(int place) => _links[place / Stride];

    private int Slot(ulong key) => (int)((key * 0x9E37_79B9_7F4A_7C15) >> _shift);

    private static ulong Key(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt64LittleEndian(bytes[at..]);
}
