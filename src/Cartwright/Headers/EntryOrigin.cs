namespace Cartwright.Headers;

/// <summary>Where a header field's value came from.</summary>
public enum EntryOrigin
{
    /// <summary>The manifest's <c>header</c> states it.</summary>
    Manifest,

    /// <summary>The manifest's <c>cart</c> gives it.</summary>
    Cart,

    /// <summary>It was worked out.</summary>
    WorkedOut,

    /// <summary>The table's own default.</summary>
    Default,

    /// <summary>The program's bytes were kept, or it was read from an image.</summary>
    Image,
}
