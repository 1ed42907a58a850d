using System.Buffers;

namespace Cartwright.Images;

/// <summary>Writes hex record lines to a stream through one rented buffer.</summary>
/// <remarks>
/// Lines end in CR LF: programmers fed over a serial line and programs of the DOS age need the CR, and every reader takes both.
/// </remarks>
/// <param name="stream">Where the lines go.</param>
internal sealed class RecordWriter(Stream stream) : IDisposable
{
    /// <summary>Most bytes of one record, count and checksum included.</summary>
    public const int MostBytes = 1 + 255;

    private const int BufferSize = 64 << 10;
    private const int LongestLine = 2 + (2 * MostBytes) + 2;

    private readonly byte[] _buffer = ArrayPool<byte>.Shared.Rent(BufferSize);
    private int _length;

    /// <summary>Adds one line: the mark, the record in upper case digits, the line end.</summary>
    /// <param name="mark">What stands before the first digit.</param>
    /// <param name="record">Count to checksum.</param>
    public void Write(ReadOnlySpan<byte> mark, ReadOnlySpan<byte> record)
    {
        if (_buffer.Length - _length < LongestLine) Flush();
        var line = _buffer.AsSpan(_length);
        mark.CopyTo(line);
        Convert.TryToHexString(record, line[mark.Length..], out var digits);
        "\r\n"u8.CopyTo(line[(mark.Length + digits)..]);
        _length += mark.Length + digits + 2;
    }

    /// <summary>Hands what is buffered to the stream.</summary>
    public void Flush()
    {
        stream.Write(_buffer, 0, _length);
        _length = 0;
    }

    /// <summary>Gives the buffer back. What was not flushed is lost.</summary>
    public void Dispose() => ArrayPool<byte>.Shared.Return(_buffer);

    /// <summary>The sum of all bytes, modulo 256.</summary>
    public static byte Sum(ReadOnlySpan<byte> bytes)
    {
        byte sum = 0;
        foreach (var value in bytes) sum += value;
        return sum;
    }
}
