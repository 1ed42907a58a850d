namespace Cartwright.TestImages;

/// <summary>Which stretches of an image are filled, and with what.</summary>
public sealed record FillRequest
{
    /// <summary>Customary shortest stretch in bytes: shorter ones may well be data.</summary>
    public const int UsualShortest = 1 << 10;

    /// <summary>Value of unused bytes.</summary>
    public byte Value { get; init; } = 0xFF;

    /// <summary>Shorter stretches are left alone, in bytes.</summary>
    public int Shortest { get; init; } = UsualShortest;

    /// <summary>Other chance bytes for another number.</summary>
    public uint Seed { get; init; }
}
