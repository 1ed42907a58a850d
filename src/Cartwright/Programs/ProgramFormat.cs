namespace Cartwright.Programs;

/// <summary>The file formats a toolchain hands over.</summary>
public enum ProgramFormat
{
    /// <summary>Plain bytes without addresses.</summary>
    Raw,

    /// <summary>Intel HEX, with 8-, 16- (segment) and 32-bit (linear) addressing.</summary>
    IntelHex,

    /// <summary>Motorola S-record.</summary>
    SRecord,

    /// <summary>ELF, 32-bit, either byte order, loaded by physical address.</summary>
    Elf,
}
