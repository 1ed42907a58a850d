namespace Cartwright.Tests.Inspection;

/// <summary>A fault that homebrew images are known to have.</summary>
/// <param name="Cart">The example it is put into.</param>
/// <param name="Spoil">Puts it in.</param>
/// <param name="Said">Code and level of the finding it must get: <c>CW8008 warning</c>; null where nothing of it may be an error or a warning.</param>
/// <param name="Also">The field that is put right when asked for by name; null where asking changes nothing.</param>
/// <param name="Mended">Whether mending gives the example's own bytes again, unasked.</param>
internal sealed record SeenFault(string Cart, Func<byte[], byte[]> Spoil, string? Said, bool Mended = false, string? Also = null);
