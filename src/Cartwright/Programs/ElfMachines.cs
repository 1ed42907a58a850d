using System.Collections.Frozen;

namespace Cartwright.Programs;

/// <summary>The processors a cartridge program may be for, by <c>e_machine</c>. Source: elf.h of the GNU C library.</summary>
internal static class ElfMachines
{
    private static readonly FrozenDictionary<ushort, string> Names = new Dictionary<ushort, string>
    {
        [2] = "SPARC",
        [3] = "80386",
        [4] = "68000",
        [8] = "MIPS",
        [10] = "MIPS RS3",
        [20] = "PowerPC",
        [36] = "V800",
        [40] = "ARM",
        [42] = "SuperH",
        [46] = "H8/300",
        [53] = "68HC12",
        [62] = "x86-64",
        [83] = "AVR",
        [87] = "V850",
        [165] = "8051",
        [183] = "ARM 64-bit",
        [220] = "Z80",
        [243] = "RISC-V",
        [254] = "6502", // From memory.
        [257] = "65816", // From memory.
    }.ToFrozenDictionary();

    /// <summary>The machine in words, byte order included: some numbers serve both orders.</summary>
    public static string Words(ushort machine, bool isBigEndian) =>
        $"{Names.GetValueOrDefault(machine) ?? $"machine {machine}"}, {(isBigEndian ? "big" : "little")}-endian";
}
