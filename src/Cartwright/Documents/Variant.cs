namespace Cartwright.Documents;

/// <summary>Something as one layout of a platform has it.</summary>
/// <typeparam name="T">The thing.</typeparam>
/// <param name="Layout">The layout's name.</param>
/// <param name="Value">The thing.</param>
internal readonly record struct Variant<T>(string Layout, T Value);
