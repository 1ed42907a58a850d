namespace Cartwright.Headers;

/// <summary>What may be written for a header field besides its names.</summary>
public enum ValueForm
{
    /// <summary>Text with rules of its own.</summary>
    Free,

    /// <summary>A whole number, decimal or hexadecimal.</summary>
    Number,

    /// <summary>The raw value in hexadecimal: <c>0x1B</c>.</summary>
    Code,

    /// <summary>A size, or <c>raw</c> and the code: <c>raw 0x05</c>.</summary>
    SizeOrCode,
}
