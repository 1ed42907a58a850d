namespace Cartwright.Patching;

/// <summary>Reads what a patch of one format states; null when its header is damaged.</summary>
/// <param name="patch">The whole patch file; it begins with the format's magic.</param>
internal delegate PatchStatement? PatchDescribe(ReadOnlySpan<byte> patch);
