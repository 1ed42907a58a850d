using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>A place in the ROM whose bytes differ from unit to unit.</summary>
/// <param name="Name">Its name, by which labels and the table of units know it.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Offset">Its first byte in the region.</param>
/// <param name="Width">Bytes.</param>
/// <param name="Place">Where it stands in the manifest.</param>
public sealed record UnitField(string Name, UnitFieldKind Kind, long Offset, int Width, SourcePlace Place)
{
    /// <summary>The digits of a serial number when none are stated.</summary>
    public const string TenDigits = "0123456789";

    /// <summary>The region it lies in; null for the first.</summary>
    public string? Region { get; init; }

    /// <summary>True for a serial number as a binary number; false for one in digits.</summary>
    public bool IsBinary { get; init; }

    /// <summary>True for a binary number with its low byte first.</summary>
    public bool LowByteFirst { get; init; }

    /// <summary>The digits of a serial number, that of 0 first.</summary>
    public string Alphabet { get; init; } = TenDigits;

    /// <summary>What ends a serial number in digits, within its width.</summary>
    public CheckDigit Check { get; init; }

    /// <summary>Value of the bytes behind a text.</summary>
    public byte Pad { get; init; } = (byte)' ';
}
