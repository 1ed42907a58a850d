namespace Cartwright.Headers;

/// <summary>Finds what belongs in a field that holds a known wrong value.</summary>
/// <param name="held">The field's bytes.</param>
/// <param name="context">What is known of the image.</param>
/// <returns>The right text; null where the bytes are not of that kind.</returns>
public delegate string? FieldRepairFunction(ReadOnlySpan<byte> held, HeaderContext context);
