namespace Cartwright.Headers;

/// <summary>A key of the manifest's <c>cart</c> that header fields take their value from.</summary>
public enum CartKey
{
    /// <summary><c>cart.title</c>.</summary>
    Title,

    /// <summary><c>cart.revision</c>.</summary>
    Revision,
}
