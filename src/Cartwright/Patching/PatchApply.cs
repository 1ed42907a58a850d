namespace Cartwright.Patching;

/// <summary>Applies a patch of one format; null when an error was logged.</summary>
/// <param name="image">The base.</param>
/// <param name="patch">The whole patch file; it begins with the format's magic.</param>
/// <param name="log">Where findings go.</param>
internal delegate PatchResult? PatchApply(ReadOnlySpan<byte> image, ReadOnlySpan<byte> patch, PatchLog log);
