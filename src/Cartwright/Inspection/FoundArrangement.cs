namespace Cartwright.Inspection;

/// <summary>A way in which chips give an image.</summary>
/// <param name="Way">The way.</param>
/// <param name="Image">The image in the console's order.</param>
/// <param name="Told">What the image is, in words.</param>
public sealed record FoundArrangement(ChipArrangement Way, ReadOnlyMemory<byte> Image, string Told);
