namespace Cartwright.Tests.Plans;

/// <summary>The cells of a flash chip, simulated byte by byte: programming can only clear bits, erasing sets all of a block.</summary>
internal sealed class FlashCells(byte[] held)
{
    private readonly byte[] _cells = [.. held];

    public byte this[int address] => _cells[address];

    public int Erases { get; private set; }

    public void Program(int address, byte value) => _cells[address] = (byte)(_cells[address] & value);

    public void Erase(int start, int length)
    {
        Erases++;
        for (var address = start; address < start + length; address++)
        {
            _cells[address] = 0xFF;
        }
    }

    public void WritePage(int start, byte[] wanted, int length)
    {
        Erase(start, length);
        for (var address = start; address < start + length; address++)
        {
            Program(address, wanted[address]);
        }
    }

    public bool Holds(byte[] wanted) => _cells.AsSpan().SequenceEqual(wanted);
}
