namespace Cartwright.Images;

/// <summary>An output file and what identifies it.</summary>
/// <param name="File">The file.</param>
/// <param name="Digest">Its size and digests.</param>
public sealed record WrittenFile(OutputFile File, FileDigest Digest);
