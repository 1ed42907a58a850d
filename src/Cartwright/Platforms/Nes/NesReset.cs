using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>Where in the PRG a mapper lets the CPU look for the RESET vector at power-on.</summary>
/// <param name="Span">Bytes before $10000 that are known to be visible then; the vector lies at their end.</param>
/// <param name="EveryBank">True when any bank of that length may be the visible one, so that each needs the vector.</param>
/// <param name="Advised">Length of banks that had better hold the vector too, as sources disagree; 0 when none.</param>
public sealed record NesReset(int Span, bool EveryBank = false, int Advised = 0)
{
    /// <summary>No banks: the vector is at the end of the PRG.</summary>
    public static NesReset End { get; } = new(0x8000);

    /// <summary>The last so many KiB are visible.</summary>
    /// <param name="kib">KiB.</param>
    public static NesReset Last(int kib) => new(kib << 10);

    /// <summary>Any bank of so many KiB may be visible.</summary>
    /// <param name="kib">KiB.</param>
    public static NesReset Every(int kib) => new(kib << 10, EveryBank: true);

    /// <summary>The rule in words.</summary>
    public string Words => this == End ? "at the end of PRG"
        : EveryBank ? $"at the end of every {ByteSize.Words(Span)} bank"
        : $"in the last {ByteSize.Words(Span)}" + (Advised > 0 ? $", and better at the end of every {ByteSize.Words(Advised)} too" : "");
}
