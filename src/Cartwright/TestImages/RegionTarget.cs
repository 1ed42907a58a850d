using Cartwright.Headers;

namespace Cartwright.TestImages;

/// <summary>A region of a board that a test image is made for, as the console sees it.</summary>
/// <param name="Region">The region's name.</param>
/// <param name="Size">Length in bytes.</param>
/// <param name="BusWidth">Data lines of the bus: 8 or 16.</param>
/// <param name="ByteOrder">Which byte of a 16-bit bus carries the even address.</param>
/// <param name="BankSize">Bytes of a bank, a power of two.</param>
public sealed record RegionTarget(string Region, int Size, int BusWidth, ByteOrder ByteOrder, int BankSize);
