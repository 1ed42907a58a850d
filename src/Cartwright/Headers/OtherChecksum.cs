namespace Cartwright.Headers;

/// <summary>Another function than the documented one, of which images are known to hold the value.</summary>
/// <param name="Compute">The pure function that gives the value.</param>
/// <param name="Rule">The function in words.</param>
public sealed record OtherChecksum(ChecksumFunction Compute, string Rule);
