namespace Cartwright.Manifests;

/// <summary>How the check value of a save is worked out.</summary>
public enum SaveCheckKind
{
    /// <summary>The sum of the bytes, in one byte.</summary>
    Sum8,

    /// <summary>The sum of the bytes, in two bytes.</summary>
    Sum16,

    /// <summary>The sum of the bytes, in four bytes.</summary>
    Sum32,

    /// <summary>The sum of the big-endian 16-bit words, in two bytes.</summary>
    WordSum,

    /// <summary>The exclusive or of the big-endian 16-bit words, in two bytes.</summary>
    WordXor,

    /// <summary>CRC-16/IBM-3740, in two bytes.</summary>
    Crc16,

    /// <summary>CRC-32/ISO-HDLC, in four bytes.</summary>
    Crc32,

    /// <summary>Adler-32, in four bytes.</summary>
    Adler32,
}
