namespace Cartwright.Roms;

/// <summary>A range of the processor's addresses that shows one run of a region.</summary>
/// <param name="Start">First address.</param>
/// <param name="End">The address after the last.</param>
/// <param name="Offset">What the first address shows: a byte offset in the region, below zero counted back from its end.</param>
public readonly record struct AddressWindow(int Start, int End, long Offset);
