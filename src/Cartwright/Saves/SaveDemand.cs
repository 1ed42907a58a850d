namespace Cartwright.Saves;

/// <summary>What a cart says of its save memory.</summary>
/// <param name="Platform">The platform's id.</param>
/// <param name="Size">Bytes of the memory by its header; null where the header does not say.</param>
public sealed record SaveDemand(string Platform, long? Size);
