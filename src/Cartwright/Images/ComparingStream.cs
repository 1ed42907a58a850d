namespace Cartwright.Images;

/// <summary>Compares what is written to it with another stream, byte for byte.</summary>
/// <param name="held">The stream it is compared with, read from where it stands.</param>
internal sealed class ComparingStream(Stream held) : Stream
{
    // In bytes: a piece at a time, so that a large file is not held twice.
    private const int Piece = 1 << 16;

    private readonly byte[] _piece = new byte[Piece];

    /// <summary>True while everything written stood there too.</summary>
    public bool IsSame { get; private set; } = true;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => held.Length;

    public override long Position
    {
        get => held.Position;
        set => throw new NotSupportedException();
    }

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        for (; IsSame && !buffer.IsEmpty; buffer = buffer[Math.Min(Piece, buffer.Length)..])
        {
            var written = buffer[..Math.Min(Piece, buffer.Length)];
            var read = held.ReadAtLeast(_piece.AsSpan(0, written.Length), written.Length, throwOnEndOfStream: false);
            IsSame = _piece.AsSpan(0, read).SequenceEqual(written);
        }
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
