using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Plans;

namespace Cartwright;

/// <summary>What changes on one chip.</summary>
/// <param name="Chip">The chip as it is to be.</param>
/// <param name="Plan">What has to be erased and programmed; null when its image is what it was.</param>
public sealed record ChipRewrite(ChipImage Chip, WritePlan? Plan)
{
    /// <summary>Whether a plan can be made for a chip at all, and for what; null where part or sectors are not known.</summary>
    /// <param name="chip">The chip.</param>
    /// <param name="name">The part's name as the user wrote it, which may say T or B; null for the catalogue's.</param>
    internal static WriteTarget? TargetOf(ChipImage chip, string? name)
    {
        if (chip.Part is not { } part)
        {
            return null;
        }

        // What stands against a plan is for `plan` to say; the others just tell less then.
        var options = PlanOptions.None with { Width = part.Supports(chip.Site.Width) ? chip.Site.Width : null };
        var target = PlanChecks.Target(part, name ?? part.Name, options, SourcePlace.None, new FindingLog());
        return target is not null && SectorGroup.TotalOf(target.Map) == chip.Capacity ? target : null;
    }

    /// <summary>Plans what changes on a chip; null where its sectors are not known, or it was of another size.</summary>
    /// <param name="change">The change.</param>
    /// <param name="name">The part's name as the user wrote it, which may say T or B; null for the catalogue's.</param>
    public static ChipRewrite? Of(ChipChange change, string? name) =>
        !change.Before.IsEmpty && TargetOf(change.Chip, name) is { } target
            ? new ChipRewrite(change.Chip, WritePlanner.Plan(target, change.Before.Span, change.Chip.Bytes.Span))
            : null;
}
