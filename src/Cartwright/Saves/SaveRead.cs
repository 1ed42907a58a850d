namespace Cartwright.Saves;

/// <summary>A save as it was read back, to be kept.</summary>
/// <param name="Unit">The unit it came out of.</param>
/// <param name="Date">The day it was read.</param>
/// <param name="IsDateGiven">True when the day was stated; false when it is that of the file.</param>
/// <param name="File">The file, for messages.</param>
/// <param name="First">The bytes.</param>
/// <param name="Second">A second read; null when there is none.</param>
public sealed record SaveRead(string Unit, DateOnly Date, bool IsDateGiven, string File, byte[] First, byte[]? Second)
{
    /// <summary>Whether the reads agree.</summary>
    public ReadAgreement Agreement =>
        Second is null ? ReadAgreement.One
        : First.AsSpan().SequenceEqual(Second) ? ReadAgreement.Equal
        : ReadAgreement.Different;
}
