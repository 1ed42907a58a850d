namespace Cartwright;

/// <summary>A file with a read-back.</summary>
/// <param name="File">The file.</param>
/// <param name="Unit">The unit that was read; null where no units are told apart.</param>
/// <param name="Insertion">The number of the insertion it was made in.</param>
/// <param name="Programming">The number of the programming it came after.</param>
public sealed record ProofRead(string File, string? Unit = null, int Insertion = 1, int Programming = 1);
