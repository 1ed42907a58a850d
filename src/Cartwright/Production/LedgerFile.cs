namespace Cartwright.Production;

/// <summary>A file of one unit.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Site">The site whose chip it is for; null for the ROM.</param>
/// <param name="Offset">Its first byte on the chip, where it is a part of it; 0 for a whole file.</param>
/// <param name="Crc32">CRC-32 as eight hexadecimal digits.</param>
/// <param name="Sha256">SHA-256 as hexadecimal digits.</param>
public sealed record LedgerFile(string Name, string? Site, long Offset, string Crc32, string Sha256);
