namespace Cartwright.Roms;

/// <summary>A range of the processor's addresses that shows one bank or another.</summary>
/// <param name="Start">First address, a multiple of the bank size.</param>
/// <param name="End">The address after the last.</param>
/// <param name="BankSize">Bytes of a bank.</param>
/// <param name="LastBank">The largest bank number the board can be told.</param>
public sealed record BankWindow(int Start, int End, int BankSize, int LastBank = 0xFF);
