namespace Cartwright.Programs;

/// <summary>One program header of a 32-bit ELF file.</summary>
/// <param name="At">Offset of the program header in the file.</param>
/// <param name="Type">Its <c>p_type</c>.</param>
/// <param name="Offset">Offset of its bytes in the file, <c>p_offset</c>.</param>
/// <param name="RunAddress">Where the code expects the bytes, <c>p_vaddr</c>.</param>
/// <param name="LoadAddress">Where the bytes lie in ROM, <c>p_paddr</c>.</param>
/// <param name="FileSize">Bytes in the file, <c>p_filesz</c>.</param>
/// <param name="MemorySize">Bytes at run time, <c>p_memsz</c>: what exceeds the file size is cleared by start-up code.</param>
internal readonly record struct ElfSegment(int At, uint Type, uint Offset, uint RunAddress, uint LoadAddress, uint FileSize, uint MemorySize)
{
    /// <summary>Bytes of one program header.</summary>
    public const int HeaderSize = 0x20;

    private const uint TypeLoad = 1;

    /// <summary>True when it is to be loaded.</summary>
    public bool IsLoad => Type == TypeLoad;

    /// <summary>Reads the program header at an offset.</summary>
    public static ElfSegment Read(ElfFields fields, int at) => new(
        at,
        fields.Word(at),
        fields.Word(at + 0x04),
        fields.Word(at + 0x08),
        fields.Word(at + 0x0C),
        fields.Word(at + 0x10),
        fields.Word(at + 0x14));
}
