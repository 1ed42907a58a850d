namespace Cartwright.Roms;

/// <summary>A place of the ROM that a program can go to by name: the boot code, a start-up block.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Region">The region.</param>
/// <param name="Offset">Its first byte in the region.</param>
/// <param name="Length">Most bytes it holds.</param>
/// <param name="Meaning">What goes there, one sentence.</param>
public sealed record NamedPlace(string Name, string Region, long Offset, long Length, string Meaning);
