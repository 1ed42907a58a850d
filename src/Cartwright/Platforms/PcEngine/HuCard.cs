namespace Cartwright.Platforms.PcEngine;

/// <summary>The sizes and places that are common to all cards.</summary>
internal static class HuCard
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes of one bank of the processor's map.</summary>
    public const int Bank = 0x2000;

    /// <summary>Where bank 0 is seen at reset.</summary>
    public const int BankZero = 0xE000;

    /// <summary>All a console sees of a card.</summary>
    public const int Window = 0x100000;

    /// <summary>The size whose last third is seen from bank 40 on.</summary>
    public const int ThreeEighths = 0x60000;

    /// <summary>Bytes of such a card that are seen from bank 00 on.</summary>
    public const int ThreeEighthsFirst = 0x40000;

    /// <summary>Where the upper half of the window begins: bank 40.</summary>
    public const int UpperHalf = 0x80000;

    /// <summary>Size of a card whose upper half shows one of four pages.</summary>
    public const int Paged = 5 * UpperHalf;

    /// <summary>Offset of the reset vector; from memory, the others lie in front of it.</summary>
    public const int Reset = 0x1FFE;
}
