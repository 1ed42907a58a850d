namespace Cartwright.Chips;

/// <summary>A maker's code as its chips answer it.</summary>
/// <param name="Seen">The byte seen: seven bits of code and, in the eighth, odd parity.</param>
/// <param name="Bank">The bank of the code: one more than the continuation codes 7F before it.</param>
/// <param name="Name">The maker.</param>
public readonly record struct MakerCode(byte Seen, int Bank, string Name);
