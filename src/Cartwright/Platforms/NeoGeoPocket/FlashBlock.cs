namespace Cartwright.Platforms.NeoGeoPocket;

/// <summary>A block of a flash chip: what the boot ROM erases and writes at once.</summary>
/// <param name="Offset">Its first byte in the ROM.</param>
/// <param name="Length">Bytes.</param>
public readonly record struct FlashBlock(int Offset, int Length);
