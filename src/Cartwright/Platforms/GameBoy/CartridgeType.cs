namespace Cartwright.Platforms.GameBoy;

/// <summary>One value of the cartridge type at 0x147.</summary>
/// <param name="Code">The byte.</param>
/// <param name="Name">The word of the manifest.</param>
/// <param name="Controller">Its bank controller.</param>
/// <param name="Ram">Where its RAM is.</param>
/// <param name="Battery">True when a battery keeps the RAM.</param>
/// <param name="Meaning">What else is to say; null for nothing.</param>
public sealed record CartridgeType(byte Code, string Name, BankController Controller, RamKind Ram, bool Battery, string? Meaning = null);
