namespace Cartwright.ReadBacks;

/// <summary>One read of a chip or a cartridge.</summary>
/// <param name="Bytes">What was read.</param>
/// <param name="Insertion">The number of the insertion it was made in.</param>
/// <param name="Programming">The number of the programming it came after.</param>
public sealed record ReadBack(byte[] Bytes, int Insertion = 1, int Programming = 1);
