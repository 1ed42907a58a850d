namespace Cartwright.TestImages;

/// <summary>What a user may choose of a test image besides its size.</summary>
public sealed record TestImageSettings
{
    /// <summary>Customary bank size in bytes.</summary>
    public const int UsualBankSize = 16 << 10;

    /// <summary>Added to the position of each chip, so that two boards can have images of their own.</summary>
    public uint Seed { get; init; }

    /// <summary>Bytes of a bank, a power of two.</summary>
    public int BankSize { get; init; } = UsualBankSize;
}
