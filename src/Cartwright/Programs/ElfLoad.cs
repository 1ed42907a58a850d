namespace Cartwright.Programs;

/// <summary>Which of the two addresses of an ELF load segment says where its bytes belong.</summary>
public enum ElfLoad
{
    /// <summary>The load address (<c>p_paddr</c>): where the bytes lie in ROM before start-up code copies any of them.</summary>
    Physical,

    /// <summary>The run address (<c>p_vaddr</c>): where the code expects the bytes while it runs.</summary>
    Virtual,
}
