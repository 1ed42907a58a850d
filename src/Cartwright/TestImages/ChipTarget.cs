using Cartwright.ReadBacks;

namespace Cartwright.TestImages;

/// <summary>A chip that a test image is made for.</summary>
/// <param name="Site">The site's name.</param>
/// <param name="Size">Capacity in bytes, a power of two.</param>
/// <param name="Shape">Width of the chip and order of the bytes of a word in its file.</param>
/// <param name="Seed">Another number for each chip of a board.</param>
public sealed record ChipTarget(string Site, int Size, WordShape Shape, uint Seed);
