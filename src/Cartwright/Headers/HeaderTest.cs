namespace Cartwright.Headers;

/// <summary>Asks something of the bytes of a whole header.</summary>
/// <param name="header">The bytes, as long as the table.</param>
public delegate bool HeaderTest(ReadOnlySpan<byte> header);
