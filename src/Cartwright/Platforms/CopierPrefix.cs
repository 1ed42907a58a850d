namespace Cartwright.Platforms;

/// <summary>The 512 bytes that old copiers put in front of an image. Their contents cannot be trusted; the length of the file shows them.</summary>
public static class CopierPrefix
{
    /// <summary>Bytes of a prefix.</summary>
    public const int Length = 0x200;

    private const int Unit = 0x400;

    /// <summary>Whether a file is as long as an image with a prefix.</summary>
    /// <param name="file">The file.</param>
    public static bool Fits(ReadOnlySpan<byte> file) => file.Length % Unit == Length && file.Length > Length;

    /// <summary>The claim on a file as it is, or, where that is less sure, on what lies behind a prefix.</summary>
    /// <param name="file">The file.</param>
    /// <param name="claim">Makes a claim on an image.</param>
    public static RecognitionClaim? Best(ReadOnlySpan<byte> file, Func<ReadOnlySpan<byte>, RecognitionClaim?> claim)
    {
        var plain = claim(file);
        var behind = Fits(file) ? claim(file[Length..]) : null;
        var isBetter = behind is not null
            && (plain is null || behind.Certainty > plain.Certainty || (behind.Certainty == plain.Certainty && behind.Score > plain.Score));
        return isBetter ? behind! with { PrefixLength = Length } : plain;
    }
}
