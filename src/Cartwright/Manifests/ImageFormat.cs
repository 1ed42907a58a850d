namespace Cartwright.Manifests;

/// <summary>The file formats a chip image is written in.</summary>
public enum ImageFormat
{
    /// <summary>Plain bytes, as many as the chip holds.</summary>
    Raw,

    /// <summary>Intel HEX.</summary>
    IntelHex,

    /// <summary>Motorola S-record.</summary>
    SRecord,
}
