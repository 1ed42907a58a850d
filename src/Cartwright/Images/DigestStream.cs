using System.IO.Hashing;
using System.Security.Cryptography;
using Cartwright.Checksums;

namespace Cartwright.Images;

/// <summary>Passes bytes on to another stream and computes their digest on the way.</summary>
internal sealed class DigestStream(Stream inner) : Stream
{
    private readonly Crc32 _crc = new();
    private readonly IncrementalHash _sha = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private long _size;
    private ulong _sum;

    public FileDigest Digest => new(_size, _crc.GetCurrentHashAsUInt32(), Convert.ToHexStringLower(_sha.GetCurrentHash()), (ushort)_sum);

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => _size;

    public override long Position
    {
        get => _size;
        set => throw new NotSupportedException();
    }

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        _crc.Append(buffer);
        _sha.AppendData(buffer);
        _sum += ByteSum.Sum64(buffer);
        _size += buffer.Length;
        inner.Write(buffer);
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush() => inner.Flush();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _sha.Dispose();
        }

        base.Dispose(disposing);
    }
}
