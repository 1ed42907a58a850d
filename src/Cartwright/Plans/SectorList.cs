using System.Globalization;
using System.Text;

namespace Cartwright.Plans;

/// <summary>A plan as plain text, one line a sector or page, for readers and scripts that rewrite single sectors.</summary>
/// <remarks>
/// ASCII with LF line ends. A line that begins with <c>#</c> is a remark. Every other line has three words with one blank between them: the action,
/// then first byte and length as hexadecimal numbers with <c>0x</c>. Actions are <c>keep</c>, <c>program</c> (on top of what is there),
/// <c>erase</c> (then program) and <c>rewrite</c>. The lines stand in the order of the addresses, and together cover the chip.
/// </remarks>
public static class SectorList
{
    /// <summary>Writes the list.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="part">Name of the part, as it is to stand in the remark.</param>
    public static string Write(WritePlan plan, string part)
    {
        var text = new StringBuilder("# Sectors to rewrite: action, first byte, length\n");
        text.Append(CultureInfo.InvariantCulture, $"# {part}, {plan.WholeChip.Length} bytes\n");
        foreach (var step in plan.Steps)
        {
            text.Append(CultureInfo.InvariantCulture, $"{PlanWords.Actions.Word(step.Action)} 0x{step.Start:X6} 0x{step.Length:X}\n");
        }

        return text.ToString();
    }
}
