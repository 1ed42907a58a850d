namespace Cartwright.Programs;

/// <summary>What differs between the two text formats in the frame of a record.</summary>
/// <param name="MarkLength">Characters before the first digit of the count.</param>
/// <param name="LeastDigits">Fewest hex digits a record can have.</param>
/// <param name="Uncounted">Bytes of a record that its count leaves out.</param>
/// <param name="GoodSum">What all bytes of an intact record add up to, modulo 256.</param>
internal sealed record RecordShape(int MarkLength, int LeastDigits, int Uncounted, byte GoodSum)
{
    /// <summary>Most bytes one record of either format can have: the count, 255 counted bytes, and the rest of an Intel HEX frame.</summary>
    public const int MostBytes = 255 + 5;

    /// <summary>Intel Hexadecimal Object File Format Specification, revision A, 1988: count, offset (2), type and checksum are not counted.</summary>
    public static RecordShape IntelHex { get; } = new(MarkLength: 1, LeastDigits: 10, Uncounted: 5, GoodSum: 0x00);

    /// <summary>srec_motorola(5) manual page: only the count itself is not counted.</summary>
    public static RecordShape SRecord { get; } = new(MarkLength: 2, LeastDigits: 8, Uncounted: 1, GoodSum: 0xFF);
}
