namespace Cartwright.Saves;

/// <summary>A file of a kept save.</summary>
/// <param name="Name">Its name in the folder.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Sha256">SHA-256 as hexadecimal digits.</param>
public sealed record KeptFile(string Name, long Bytes, string Sha256);
