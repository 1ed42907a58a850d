using System.Globalization;
using Cartwright.Manifests;
using Cartwright.Slots;

namespace Cartwright.Cli;

/// <summary>Tells where the games of a multi-game image lie, and what its switches show.</summary>
internal static class SlotReport
{
    public static void WriteText(TextWriter output, SlotPlan plan)
    {
        output.WriteLine("Slots");
        Columns.Write(output, "  ",
        [
            ["slot", "title", "region", "from", "to", "size", "unused", "CRC-32"],
            .. plan.Slots.Select(static slot => new[]
            {
                slot.Index.ToString(CultureInfo.InvariantCulture), slot.Title, slot.Region, Number.Hex(slot.Start, 6), Number.Hex(slot.End - 1, 6),
                ByteSize.Words(slot.Size), slot.Unused == 0 ? "" : ByteSize.Words(slot.Unused), slot.Digest.Crc32Text,
            }),
        ]);
        if (plan.Unused > 0)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {ByteSize.Words(plan.Unused)} of {ByteSize.Words(plan.Size)} in slots are unused ({100.0 * plan.Unused / plan.Size:F0} %)"));
        }

        WriteSwitches(output, plan);
    }

    private static void WriteSwitches(TextWriter output, SlotPlan plan)
    {
        if (plan.Positions.IsEmpty)
        {
            return;
        }

        var count = plan.Positions[0].IsHigh.Length;
        output.WriteLine("Switches: open is high, through a pull-up; closed is low");
        Columns.Write(output, "  ",
        [
            [.. Enumerable.Range(0, count).Select(index => $"switch {index + 1} ({string.Join(", ", plan.Switches.Select(row => Line(row, index)))})"), "shows"],
            .. plan.Positions.Select(static position => (string[])[.. position.IsHigh.Select(static isHigh => isHigh ? "open" : "closed"), position.Shown]),
        ]);
    }

    private static string Line(SlotSwitch row, int index) => string.Create(CultureInfo.InvariantCulture, $"{(row.Region is { } region ? region.Text + " " : "")}A{row.Lines[index]}");
}
