namespace Cartwright.Headers;

/// <summary>One value of a field and its name.</summary>
/// <param name="Value">The number as the header holds it.</param>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Meaning">What it means; null when the name says it.</param>
public sealed record NamedValue(ulong Value, string Name, string? Meaning = null);
