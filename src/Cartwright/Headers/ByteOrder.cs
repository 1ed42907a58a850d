namespace Cartwright.Headers;

/// <summary>Which byte of a number comes first.</summary>
public enum ByteOrder
{
    /// <summary>The least significant byte first.</summary>
    LittleEndian,

    /// <summary>The most significant byte first.</summary>
    BigEndian,
}
