using System.Text;
using Cartwright.Findings;
using Cartwright.Programs;

namespace Cartwright.Tests.Programs;

/// <summary>A faulty file and the one finding it has to give.</summary>
/// <param name="Name">What is wrong with it.</param>
/// <param name="Rule">The rule it breaks.</param>
/// <param name="File">Its name.</param>
/// <param name="Bytes">Its content.</param>
/// <param name="Line">The line named; 0 for none.</param>
/// <param name="Format">The stated format; null to recognise it.</param>
/// <param name="AddressUnit">The stated address unit.</param>
internal sealed record FaultCase(string Name, FindingRule Rule, string File, byte[] Bytes, int Line = 0, ProgramFormat? Format = null, int AddressUnit = 1)
{
    public static FaultCase Hex(string name, FindingRule rule, int line, params string[] lines) =>
        new(name, rule, "game.hex", Encoding.Latin1.GetBytes(Records.Lines(lines)), line);

    public static FaultCase S(string name, FindingRule rule, int line, params string[] lines) =>
        new(name, rule, "game.srec", Encoding.Latin1.GetBytes(Records.Lines(lines)), line);

    public static FaultCase Elf(string name, FindingRule rule, ElfBuilder builder) => new(name, rule, "game.elf", builder.Build());
}
