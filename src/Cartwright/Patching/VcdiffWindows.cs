namespace Cartwright.Patching;

/// <summary>Steps through the windows of a VCDIFF patch; the head of each is checked before it is given out.</summary>
internal ref struct VcdiffWindows
{
    private const int FromBase = 1;
    private const int FromResult = 2;
    private const int HasAdler = 4;
    private const int KnownBits = FromBase | FromResult | HasAdler;
    private const int PackedBits = 7;

    private readonly byte? _compressor;
    private readonly int _baseLength;
    private readonly PatchLog _log;
    private PatchCursor _cursor;
    private long _segmentSize;
    private long _segmentAt;
    private long _size;

    /// <summary>Begins before the first window.</summary>
    /// <param name="patch">The whole patch.</param>
    /// <param name="header">Its header.</param>
    /// <param name="baseLength">Bytes of the base.</param>
    /// <param name="log">Where findings go.</param>
    public VcdiffWindows(ReadOnlySpan<byte> patch, VcdiffHeader header, int baseLength, PatchLog log)
    {
        _cursor = new PatchCursor(patch, header.WindowsAt, log);
        (_compressor, _baseLength, _log) = (header.Compressor, baseLength, log);
    }

    /// <summary>The window.</summary>
    public VcdiffWindow Current { get; private set; }

    /// <summary>Bytes the windows before it make.</summary>
    public int Made { get; private set; }

    /// <summary>True once an error was logged.</summary>
    public bool HasFailed { get; private set; }

    /// <summary>Goes on to the next window; false after the last one and on an error.</summary>
    public bool MoveNext()
    {
        Made += Current.Size;
        Current = default;
        if (_cursor.IsAtEnd) return false;
        HasFailed = !Read();
        return !HasFailed;
    }

    private bool Read()
    {
        var at = _cursor.Position;
        var indicator = _cursor.Byte("a window");
        if (!IsWindowIndicator(indicator, at)) return false;
        (_segmentSize, _segmentAt) = (0, 0);
        if ((indicator & (FromBase | FromResult)) != 0 && !ReadSegment((indicator & FromBase) != 0)) return false;
        var length = _cursor.VcdiffNumber("the length of a window");
        var start = _cursor.Position;
        if (_cursor.HasFailed || !IsThere(length)) return false;
        var end = start + (int)length;
        if (!ReadSize() || !IsPlain()) return false;
        return ReadSections(at, indicator, end);
    }

    private readonly bool IsWindowIndicator(byte indicator, int at)
    {
        var isKnown = (indicator & ~KnownBits) == 0 && (indicator & (FromBase | FromResult)) != (FromBase | FromResult);
        return isKnown || _log.Refuse(PatchFindings.VcdiffIndicator, at, $"The window indicator is 0x{indicator:X2}", "bits 0 to 2 alone, and not both 0 and 1");
    }

    private bool ReadSegment(bool isFromBase)
    {
        var at = _cursor.Position;
        _segmentSize = _cursor.VcdiffNumber("the size of a segment");
        _segmentAt = _cursor.VcdiffNumber("the place of a segment");
        if (_cursor.HasFailed) return false;
        var (length, name) = isFromBase ? (_baseLength, "base") : (Made, "result made so far");
        return (_segmentSize <= length && _segmentAt <= length - _segmentSize)
            || _log.Refuse(
                PatchFindings.VcdiffSegment,
                at,
                $"The segment of {PatchWords.Size(_segmentSize)} from offset {PatchWords.Offset(_segmentAt)} runs past the end of the {name}",
                $"no more than {PatchWords.Size(length)}");
    }

    private readonly bool IsThere(long length) =>
        length <= _cursor.Left
        || _log.Refuse(
            PatchFindings.EndsEarly,
            _cursor.Position,
            $"The patch ends {PatchWords.Size(_cursor.Left)} after the beginning of a window's contents",
            PatchWords.Size(length));

    private bool ReadSize()
    {
        var at = _cursor.Position;
        _size = _cursor.VcdiffNumber("the size of what a window makes");
        if (_cursor.HasFailed) return false;
        return _size <= Patch.LargestResult - Made
            || _log.Refuse(
                PatchFindings.TooLarge,
                at,
                $"The window makes {PatchWords.Size(_size)} after {PatchWords.Size(Made)} of the windows before",
                $"at most {PatchWords.Size(Patch.LargestResult)} in all");
    }

    private bool IsPlain()
    {
        var at = _cursor.Position;
        var indicator = _cursor.Byte("the delta indicator");
        if (_cursor.HasFailed) return false;
        if (indicator == 0) return true;
        if ((indicator & ~PackedBits) != 0) return _log.Refuse(PatchFindings.VcdiffIndicator, at, $"The delta indicator is 0x{indicator:X2}", "0x00");
        return _compressor is { } compressor
            ? _log.Refuse(PatchFindings.VcdiffCompressed, at, $"Sections of the window are compressed with compressor {compressor}", "plain sections")
            : _log.Refuse(PatchFindings.VcdiffIndicator, at, $"The delta indicator is 0x{indicator:X2}, but the header names no compressor", "0x00");
    }

    private bool ReadSections(int at, byte indicator, int end)
    {
        var data = _cursor.VcdiffNumber("the length of the data section");
        var instructions = _cursor.VcdiffNumber("the length of the instruction section");
        var addresses = _cursor.VcdiffNumber("the length of the address section");
        uint? adler = (indicator & HasAdler) != 0 ? _cursor.BigEndian32("the Adler-32 of a window") : null;
        if (_cursor.HasFailed) return false;
        var dataAt = _cursor.Position;
        if ((Int128)data + instructions + addresses != end - dataAt)
        {
            return _log.Refuse(
                PatchFindings.VcdiffLengths,
                dataAt,
                $"The sections have {data}, {instructions} and {addresses} bytes where the window has {end - dataAt} left",
                "lengths that fill the window exactly");
        }

        _cursor.Skip((ulong)(end - dataAt), "the sections");
        var isFromResult = (indicator & FromResult) != 0;
        Current = new VcdiffWindow(at, isFromResult, (int)_segmentAt, (int)_segmentSize, (int)_size, adler, dataAt, dataAt + (int)data, end - (int)addresses, end);
        return true;
    }
}
