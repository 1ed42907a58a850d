namespace Cartwright.Cake;

/// <summary>A cart that was built.</summary>
/// <param name="Build">The build: header, checksums, chips, findings.</param>
/// <param name="Output">Its files with their digests, the record last.</param>
public sealed record BuiltCart(CartBuild Build, CartOutputResult Output);
