namespace Cartwright.Patching;

/// <summary>The caches through which copies state their addresses. Source: RFC 3284, section 5.3.</summary>
internal sealed class VcdiffAddresses
{
    private const int NearSize = 4;
    private const int SameRow = 256;
    private const int SameSize = 3 * SameRow;
    private const int FirstNear = 2;
    private const int FirstSame = FirstNear + NearSize;

    private readonly long[] _near = new long[NearSize];
    private readonly long[] _same = new long[SameSize];
    private int _slot;
    private bool _isFresh = true;

    /// <summary>Empties the caches, as every window begins.</summary>
    public void Reset()
    {
        if (_isFresh) return;
        Array.Clear(_near);
        Array.Clear(_same);
        (_slot, _isFresh) = (0, true);
    }

    /// <summary>Reads an address, which may be any number, sensible or not.</summary>
    /// <param name="mode">How it is stated, 0 to 8.</param>
    /// <param name="here">The address of the byte made next.</param>
    /// <param name="section">The address section.</param>
    public long Read(byte mode, long here, ref PatchCursor section)
    {
        const string What = "the address of a copy";
        return mode switch
        {
            0 => section.VcdiffNumber(What),
            1 => here - section.VcdiffNumber(What),
            < FirstSame => unchecked(_near[mode - FirstNear] + section.VcdiffNumber(What)),
            _ => _same[((mode - FirstSame) * SameRow) + section.Byte(What)],
        };
    }

    /// <summary>Keeps an address that was found to be sensible.</summary>
    public void Keep(long address)
    {
        _near[_slot] = address;
        _slot = (_slot + 1) % NearSize;
        _same[address % SameSize] = address;
        _isFresh = false;
    }
}
