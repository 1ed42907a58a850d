namespace Cartwright.Patching;

/// <summary>What came out of a patch that was applied.</summary>
/// <param name="Output">The patched image.</param>
/// <param name="Checked">What the patch let us check, all of it passed.</param>
public sealed record PatchResult(byte[] Output, PatchChecks Checked);
