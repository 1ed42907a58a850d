namespace Cartwright.Programs;

/// <summary>How the offsets of Intel HEX data records are to be read at present.</summary>
internal enum HexAddressing
{
    /// <summary>No base yet: the 8-bit form, 64 KiB in all.</summary>
    None,

    /// <summary>After a type 02 record: base times 16, the offset wraps inside 64 KiB.</summary>
    Segmented,

    /// <summary>After a type 04 record: upper 16 bits of a 32-bit address.</summary>
    Linear,
}
