namespace Cartwright.Images;

/// <summary>Compares what is written to it with another stream, byte for byte.</summary>
/// <param name="held">The stream it is compared with, read from where it stands.</param>
internal sealed class ComparingStream(Stream held) : Stream
{
    private byte[] _buffer = [];

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
        if (!IsSame)
        {
            return;
        }

        if (_buffer.Length < buffer.Length)
        {
            _buffer = new byte[buffer.Length];
        }

        var read = held.ReadAtLeast(_buffer.AsSpan(0, buffer.Length), buffer.Length, throwOnEndOfStream: false);
        IsSame = _buffer.AsSpan(0, read).SequenceEqual(buffer);
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
