namespace Cartwright.TestImages;

/// <summary>An unused stretch of an image that was filled.</summary>
/// <param name="Offset">Its first byte in the file.</param>
/// <param name="Length">Its length in bytes.</param>
public sealed record FilledStretch(int Offset, int Length);
