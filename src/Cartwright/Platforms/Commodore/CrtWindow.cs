namespace Cartwright.Platforms.Commodore;

/// <summary>A run of each bank that goes into a packet of its own.</summary>
/// <param name="Address">The address it is seen at.</param>
/// <param name="Length">Its bytes.</param>
public readonly record struct CrtWindow(int Address, int Length);
