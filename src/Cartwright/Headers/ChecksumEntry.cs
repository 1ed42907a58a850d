namespace Cartwright.Headers;

/// <summary>One checksum of an image: what is stored and what was computed.</summary>
/// <param name="Row">Its row.</param>
/// <param name="Offset">Its first byte in the region.</param>
/// <param name="Stored">The value the image holds.</param>
/// <param name="Computed">The value the rule gives.</param>
public sealed record ChecksumEntry(ChecksumRow Row, int Offset, ulong Stored, ulong Computed)
{
    /// <summary>True when the two are equal.</summary>
    public bool Right => Stored == Computed;

    /// <summary>True when nothing or placeholder letters stand where a checksum of two bytes or more belongs.</summary>
    public bool IsUnset
    {
        get
        {
            Span<byte> bytes = stackalloc byte[Row.Length];
            Row.Placement.Write(bytes, Stored);
            return bytes.Length > 1 && !Right && (!bytes.ContainsAnyExcept((byte)0) || !bytes.ContainsAnyExcept((byte)0xFF) || !bytes.ContainsAnyExceptInRange((byte)'A', (byte)'Z'));
        }
    }
}
