namespace Cartwright.Cli;

/// <summary>One file of the templates.</summary>
/// <param name="Path">Family, platform or <c>every</c>, then the path in the cart folder; with forward slashes.</param>
/// <param name="Bytes">Its bytes, with the words that are to be replaced.</param>
internal readonly record struct TemplateFile(string Path, ReadOnlyMemory<byte> Bytes);
