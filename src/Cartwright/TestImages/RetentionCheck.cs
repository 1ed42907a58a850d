using System.Numerics;

namespace Cartwright.TestImages;

/// <summary>What a memory kept while its power was off.</summary>
/// <param name="Size">Bytes compared.</param>
/// <param name="WrongBefore">Bytes that were wrong before the power went off: a matter of the wiring, not of keeping.</param>
/// <param name="BitsToZero">Ones that became zeros meanwhile.</param>
/// <param name="BitsToOne">Zeros that became ones meanwhile.</param>
/// <param name="BlocksChanged">Blocks of 256 bytes with any change.</param>
public sealed record RetentionCheck(int Size, int WrongBefore, int BitsToZero, int BitsToOne, int BlocksChanged)
{
    // Memory that has forgotten everything comes up in a pattern of its own, which agrees with the test image in about half of the bits.
    private const double ForgottenShare = 0.25;

    /// <summary>True when nothing changed.</summary>
    public bool IsKept => BitsToZero + BitsToOne == 0;

    /// <summary>True when so much changed that nothing was kept at all.</summary>
    public bool IsForgotten => BitsToZero + BitsToOne > Size * 8L * ForgottenShare;

    /// <summary>Compares two reads of one memory.</summary>
    /// <param name="expected">What was written.</param>
    /// <param name="before">Read at once after writing, as long as what was written.</param>
    /// <param name="after">Read after the power was off, as long.</param>
    public static RetentionCheck Compare(ReadOnlySpan<byte> expected, ReadOnlySpan<byte> before, ReadOnlySpan<byte> after)
    {
        var (wrong, toZero, toOne, blocks, lastBlock) = (0, 0, 0, 0, -1);
        for (var at = 0; at < expected.Length; at++)
        {
            wrong += before[at] == expected[at] ? 0 : 1;
            if (before[at] == after[at])
            {
                continue;
            }

            toZero += BitOperations.PopCount((uint)(before[at] & ~after[at]));
            toOne += BitOperations.PopCount((uint)(after[at] & ~before[at]));
            blocks += at / MemoryImage.BlockSize == lastBlock ? 0 : 1;
            lastBlock = at / MemoryImage.BlockSize;
        }

        return new RetentionCheck(expected.Length, wrong, toZero, toOne, blocks);
    }
}
