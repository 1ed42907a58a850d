namespace Cartwright.Chips;

/// <summary>What a part answers when asked for its identity; hexadecimal without a prefix, blank when unknown.</summary>
/// <param name="ManufacturerId">Manufacturer code, with <c>(after 7F)</c> where a continuation code comes first.</param>
/// <param name="DeviceId">Device code: 16-bit parts show its low byte in byte mode; <c>227E+xxxx+yyyy</c> is a three-word code.</param>
public sealed record PartIdentity(string ManufacturerId, string DeviceId);
