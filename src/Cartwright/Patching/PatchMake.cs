namespace Cartwright.Patching;

/// <summary>Makes a patch of one format; null when an error was logged.</summary>
/// <param name="image">The base.</param>
/// <param name="target">What the patch is to make of it.</param>
/// <param name="log">Where findings go.</param>
internal delegate byte[]? PatchMake(ReadOnlySpan<byte> image, ReadOnlySpan<byte> target, PatchLog log);
