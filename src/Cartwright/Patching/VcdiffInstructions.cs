namespace Cartwright.Patching;

/// <summary>Steps through the instructions of one window; each is checked before it is given out.</summary>
internal ref struct VcdiffInstructions
{
    private readonly VcdiffWindow _window;
    private readonly VcdiffAddresses _cache;
    private readonly PatchLog _log;
    private PatchCursor _data;
    private PatchCursor _instructions;
    private PatchCursor _addresses;
    private int _half;
    private int _at;

    /// <summary>Begins before the first instruction.</summary>
    /// <param name="patch">The whole patch.</param>
    /// <param name="window">The window.</param>
    /// <param name="cache">The address caches; they are emptied.</param>
    /// <param name="log">Where findings go.</param>
    public VcdiffInstructions(ReadOnlySpan<byte> patch, VcdiffWindow window, VcdiffAddresses cache, PatchLog log)
    {
        (_window, _cache, _log) = (window, cache, log);
        _data = new PatchCursor(patch[..window.InstructionsAt], window.DataAt, log, "The data section");
        _instructions = new PatchCursor(patch[..window.AddressesAt], window.InstructionsAt, log, "The instruction section");
        _addresses = new PatchCursor(patch[..window.End], window.AddressesAt, log, "The address section");
        cache.Reset();
    }

    /// <summary>What the instruction does.</summary>
    public VcdiffKind Kind { get; private set; }

    /// <summary>Where it reads: an offset in the patch, or for a copy an address in segment and window laid end to end.</summary>
    public int From { get; private set; }

    /// <summary>The first byte of the window it writes.</summary>
    public int To { get; private set; }

    /// <summary>Bytes it writes.</summary>
    public int Length { get; private set; }

    /// <summary>True once an error was logged.</summary>
    public bool HasFailed { get; private set; }

    /// <summary>Goes on to the next instruction; false after the last one and on an error.</summary>
    public bool MoveNext()
    {
        To += Length;
        Length = 0;
        var step = default(VcdiffStep);
        while (step.Kind == VcdiffKind.Noop)
        {
            if ((_half & 1) == 0)
            {
                if (_instructions.IsAtEnd) return End();
                _at = _instructions.Position;
                _half = 2 * _instructions.Byte("an instruction");
            }

            step = VcdiffCodeTable.Steps[_half];
            _half++;
        }

        HasFailed = !Take(step);
        return !HasFailed;
    }

    private bool Take(VcdiffStep step)
    {
        var length = step.Size == 0 ? _instructions.VcdiffNumber("the size of an instruction") : step.Size;
        if (_instructions.HasFailed) return false;
        if (length > _window.Size - To)
        {
            return _log.Refuse(
                PatchFindings.ResultSize,
                _at,
                $"The instruction writes {PatchWords.Size(length)} where the window has room for {PatchWords.Size(_window.Size - To)}",
                $"{PatchWords.Size(_window.Size)} in all");
        }

        (Kind, Length) = (step.Kind, (int)length);
        if (Kind == VcdiffKind.Copy) return TakeAddress(step.Mode);
        From = _data.Skip(Kind == VcdiffKind.Run ? 1 : (ulong)Length, "the bytes of an instruction");
        return !_data.HasFailed;
    }

    private bool TakeAddress(byte mode)
    {
        var at = _addresses.Position;
        var here = (long)_window.SegmentSize + To;
        var address = _cache.Read(mode, here, ref _addresses);
        if (_addresses.HasFailed) return false;
        if (address < 0 || address >= here)
        {
            return _log.Refuse(
                PatchFindings.VcdiffAddress,
                at,
                $"The copy begins at address {PatchWords.Offset(address)}",
                $"an address below {PatchWords.Offset(here)}");
        }

        if (address < _window.SegmentSize && address + Length > _window.SegmentSize)
        {
            return _log.Refuse(
                PatchFindings.VcdiffAddress,
                at,
                $"The copy of {PatchWords.Size(Length)} from address {PatchWords.Offset(address)} runs out of the segment",
                $"an end no later than {PatchWords.Offset(_window.SegmentSize)}");
        }

        _cache.Keep(address);
        From = (int)address;
        return true;
    }

    private bool End()
    {
        if (To != _window.Size)
        {
            HasFailed = !_log.Refuse(PatchFindings.ResultSize, _window.At, $"The instructions of the window make {PatchWords.Size(To)}", PatchWords.Size(_window.Size));
        }
        else if (!_data.IsAtEnd || !_addresses.IsAtEnd)
        {
            HasFailed = !_log.Refuse(
                PatchFindings.VcdiffLengths,
                _window.At,
                $"The instructions of the window leave {PatchWords.Size(_data.Left)} of data and {PatchWords.Size(_addresses.Left)} of addresses unused",
                "sections that are used up exactly");
        }

        return false;
    }
}
