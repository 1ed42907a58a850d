namespace Cartwright.Patching;

/// <summary>Steps through the actions of a BPS patch; each is checked before it is given out.</summary>
internal ref struct BpsActions
{
    private readonly int _baseLength;
    private readonly int _resultLength;
    private readonly PatchLog _log;
    private PatchCursor _cursor;
    private long _baseAt;
    private long _resultAt;
    private int _at;

    /// <summary>Begins before the first action.</summary>
    /// <param name="patch">The whole patch.</param>
    /// <param name="header">Its header.</param>
    /// <param name="baseLength">Bytes of the base.</param>
    /// <param name="log">Where findings go.</param>
    public BpsActions(ReadOnlySpan<byte> patch, BpsHeader header, int baseLength, PatchLog log)
    {
        _cursor = new PatchCursor(patch[..header.ActionsEnd], header.ActionsAt, log);
        (_baseLength, _resultLength, _log) = (baseLength, (int)header.ResultSize, log);
    }

    /// <summary>What the action does.</summary>
    public BpsCommand Command { get; private set; }

    /// <summary>The first byte it reads: of the base, the patch or the result.</summary>
    public int From { get; private set; }

    /// <summary>The first byte of the result it writes.</summary>
    public int To { get; private set; }

    /// <summary>Bytes it writes.</summary>
    public int Length { get; private set; }

    /// <summary>True once an error was logged.</summary>
    public bool HasFailed { get; private set; }

    /// <summary>Bytes of the result that the actions so far make.</summary>
    public readonly int Made => To + Length;

    /// <summary>Goes on to the next action; false after the last one and on an error.</summary>
    public bool MoveNext()
    {
        if (_cursor.IsAtEnd) return false;
        _at = _cursor.Position;
        To = Made;
        Length = 0;
        var action = _cursor.BpsNumber("an action");
        HasFailed = _cursor.HasFailed || !Take(action);
        return !HasFailed;
    }

    private bool Take(ulong action)
    {
        if (action >> 2 >= (ulong)(_resultLength - To))
        {
            return _log.Refuse(
                PatchFindings.ResultSize,
                _at,
                $"The action writes {PatchWords.Size((action >> 2) + 1)} where the result has room for {PatchWords.Size(_resultLength - To)}",
                $"{PatchWords.Size(_resultLength)} in all");
        }

        Command = (BpsCommand)(action & 3);
        Length = (int)(action >> 2) + 1;
        return Command switch
        {
            BpsCommand.SourceRead => IsInBase(From = To),
            BpsCommand.TargetRead => TakeData(),
            BpsCommand.SourceCopy => Move(ref _baseAt) && IsInBase(_baseAt) && Follow(ref _baseAt),
            _ => Move(ref _resultAt) && IsMade(_resultAt) && Follow(ref _resultAt),
        };
    }

    private bool TakeData()
    {
        From = _cursor.Skip((ulong)Length, "the bytes of an action");
        return !_cursor.HasFailed;
    }

    // A distance that no image has is kept at the largest one, which every check refuses.
    private bool Move(ref long at)
    {
        var number = _cursor.BpsNumber("the distance of a copy");
        var distance = (long)Math.Min(number >> 1, int.MaxValue);
        at += (number & 1) == 0 ? distance : -distance;
        return !_cursor.HasFailed;
    }

    private bool Follow(ref long at)
    {
        From = (int)at;
        at += Length;
        return true;
    }

    private readonly bool IsInBase(long from) =>
        (from >= 0 && from + Length <= _baseLength)
        || _log.Refuse(
            PatchFindings.BpsOutsideBase,
            _at,
            $"{PatchWords.Size(Length)} are to be copied from offset {PatchWords.Offset(from)} of a base of {PatchWords.Size(_baseLength)}");

    private readonly bool IsMade(long from) =>
        (from >= 0 && from < To)
        || _log.Refuse(
            PatchFindings.BpsAheadOfResult,
            _at,
            $"Bytes are to be copied from offset {PatchWords.Offset(from)} of the result where {PatchWords.Size(To)} are made");
}
