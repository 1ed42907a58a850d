namespace Cartwright.ReadBacks;

/// <summary>How the words of a chip stand in a file.</summary>
/// <param name="Width">Data lines: 8 or 16.</param>
/// <param name="HighFirst">Of a 16-bit word, true when the byte of D8 to D15 comes first.</param>
public readonly record struct WordShape(int Width, bool HighFirst)
{
    /// <summary>Bytes of a word.</summary>
    public int Bytes => Width / 8;

    /// <summary>A word with all bits set: what erased cells read.</summary>
    public ushort Ones => (ushort)((1 << Width) - 1);
}
