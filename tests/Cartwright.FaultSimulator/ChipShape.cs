namespace Cartwright.FaultSimulator;

/// <summary>How a chip's words stand in its file.</summary>
/// <param name="Width">Bits of a word: 8 or 16.</param>
/// <param name="HighByteFirst">Whether the high byte of a 16-bit word is the first in the file.</param>
public sealed record ChipShape(int Width, bool HighByteFirst = false)
{
    public int BytesPerWord => Width / 8;

    public int AllOnes => (1 << Width) - 1;

    public int[] ToWords(byte[] file)
    {
        var words = new int[file.Length / BytesPerWord];
        for (var a = 0; a < words.Length; a++)
            words[a] = Width == 8 ? file[a] : HighByteFirst ? (file[2 * a] << 8) | file[(2 * a) + 1] : (file[(2 * a) + 1] << 8) | file[2 * a];

        return words;
    }

    public byte[] ToBytes(int[] words)
    {
        var file = new byte[words.Length * BytesPerWord];
        for (var a = 0; a < words.Length; a++)
        {
            if (Width == 8)
            {
                file[a] = (byte)words[a];
                continue;
            }

            file[(2 * a) + (HighByteFirst ? 0 : 1)] = (byte)(words[a] >> 8);
            file[(2 * a) + (HighByteFirst ? 1 : 0)] = (byte)(words[a] & 0xFF);
        }

        return file;
    }
}
