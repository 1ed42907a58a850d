namespace Cartwright.ReadBacks;

/// <summary>An image the read-back may be compared with.</summary>
/// <param name="Name">What it is called in a verdict: a site, a release, a file.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record NamedImage(string Name, byte[] Bytes);
