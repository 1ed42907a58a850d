namespace Cartwright.ReadBacks;

/// <summary>A fault that an image shows in so few words that noise could hide or feign it.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="TellingWords">Words in which it shows.</param>
public readonly record struct WeakFault(Fault Fault, int TellingWords);
