namespace Cartwright.Ordering;

/// <summary>Orders in which image files are found, beside the console's own.</summary>
public enum ImageOrder
{
    /// <summary>The console's: the byte at its lowest address first.</summary>
    Console,

    /// <summary>The two bytes of each 16-bit word exchanged.</summary>
    ByteSwapped,

    /// <summary>The four bytes of each 32-bit word reversed.</summary>
    WordSwapped,

    /// <summary>The two halves of each 32-bit word exchanged.</summary>
    HalfwordSwapped,

    /// <summary>The bits of each byte reversed.</summary>
    BitReversed,

    /// <summary>Blocks of 16 KiB, in each the odd bytes before the even ones.</summary>
    OddEvenBlocks,

    /// <summary>Blocks of 16 KiB, in each the even bytes before the odd ones.</summary>
    EvenOddBlocks,

    /// <summary>All odd bytes before all even ones.</summary>
    OddEvenHalves,

    /// <summary>Banks of 64 KiB taken apart: all upper halves before all lower ones.</summary>
    UpperLowerHalves,
}
