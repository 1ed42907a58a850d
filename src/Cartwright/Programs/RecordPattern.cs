namespace Cartwright.Programs;

/// <summary>Watches how the addresses of successive records move, to tell what an overlapping file really is.</summary>
internal sealed class RecordPattern
{
    private const int FewestPairs = 2;

    private long _address;
    private byte[] _data = [];
    private int _length;
    private int _overlapping;
    private int _halfSteps;
    private int _sameAddress;

    /// <summary>True when overlapping records advance by half their length: the addresses count 16-bit words.</summary>
    public bool CountsWords => _halfSteps >= FewestPairs && IsMost(_halfSteps);

    /// <summary>True when one address holds many records of one length and different data: a list of serial numbers.</summary>
    public bool ListsSerials => _sameAddress >= FewestPairs && IsMost(_sameAddress);

    /// <summary>Address of the latest record that showed a pattern.</summary>
    public long Address { get; private set; }

    /// <summary>Length in bytes of that record.</summary>
    public int Length { get; private set; }

    /// <summary>Line of that record.</summary>
    public int Line { get; private set; }

    /// <summary>Notes the next record that holds data.</summary>
    public void Add(long address, ReadOnlySpan<byte> data, int line)
    {
        if (_length > 0 && address >= _address && address < _address + _length) Compare(address, data, line);
        if (_data.Length < data.Length) _data = new byte[RecordShape.MostBytes];
        data.CopyTo(_data);
        (_address, _length) = (address, data.Length);
    }

    private void Compare(long address, ReadOnlySpan<byte> data, int line)
    {
        _overlapping++;
        var isHalfStep = _length % 2 == 0 && address - _address == _length / 2;
        var isOtherData = address == _address && data.Length == _length && !data.SequenceEqual(_data.AsSpan(0, _length));
        if (isHalfStep) _halfSteps++;
        if (isOtherData) _sameAddress++;
        if (isHalfStep || isOtherData) (Address, Length, Line) = (address, data.Length, line);
    }

    private bool IsMost(int count) => count * 10L >= _overlapping * 9L;
}
