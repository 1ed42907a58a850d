namespace Cartwright.Inspection;

/// <summary>An image of another length than its file.</summary>
/// <param name="Image">The image as it is now.</param>
/// <param name="Stripped">Bytes taken off its front.</param>
/// <param name="Added">Bytes of fill it was lengthened by.</param>
public sealed record FittedImage(OpenedImage Image, int Stripped, int Added)
{
    /// <summary>True when the length is another than before.</summary>
    public bool IsChanged => Stripped > 0 || Added > 0;
}
