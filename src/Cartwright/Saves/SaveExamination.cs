using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>What a file is, as far as its bytes tell.</summary>
/// <param name="Candidates">All that it can be, the best founded first.</param>
/// <param name="Deciding">What would decide between the best of them; empty where there is one.</param>
public sealed record SaveExamination(ImmutableArray<SaveCandidate> Candidates, ImmutableArray<string> Deciding)
{
    /// <summary>Examines a file.</summary>
    /// <param name="file">The file as the user wrote it.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="platforms">Ids of the platforms to think of.</param>
    /// <param name="cart">What the cart asks for; null where no cart is named.</param>
    /// <param name="log">Receives findings.</param>
    /// <returns>Null when the file can be no save.</returns>
    public static SaveExamination? Of(string file, ReadOnlySpan<byte> bytes, ImmutableArray<string> platforms, SaveDemand? cart, FindingLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        if (!SaveFileChecks.IsUsable(file, bytes, log))
            return null;

        SaveCondition.Check(file, bytes, log);
        var found = SaveCandidates.Of(bytes, platforms);
        var place = new SourcePlace(file);
        if (cart is not null)
            CheckDemand(found, bytes.Length, cart, place, log);
        else if (found.All(static row => row.Strength == 0))
            log.Add(SaveFindings.NoSuchSize, place, $"The file has {ByteSize.Describe(bytes.Length)}, which no kind of save memory fills in any of its layouts.");

        var best = found.Where(row => row.Strength == found[0].Strength).ToImmutableArray();
        var deciding = best.Length > 1 ? Decide(best) : [];
        if (!deciding.IsEmpty)
            log.Add(SaveFindings.Ambiguous, place, $"{best.Length} kinds or layouts fit equally well.");

        return new SaveExamination(found, deciding);
    }

    private static void CheckDemand(ImmutableArray<SaveCandidate> found, long length, SaveDemand cart, SourcePlace place, FindingLog log)
    {
        if (found.IsEmpty)
            log.Add(SaveFindings.DoesNotFit, place, $"No kind of save memory of `{cart.Platform}` has a file of {ByteSize.Describe(length)}.");
        else if (cart.Size is { } size && !found.Any(row => row.Size == size))
            log.Add(SaveFindings.DoesNotFit, place, $"The file has a memory of {string.Join(" or ", found.Select(static row => ByteSize.Words(row.Size)).Distinct())}.", $"{ByteSize.Describe(size)}, as the cart's header says");
    }

    private static ImmutableArray<string> Decide(ImmutableArray<SaveCandidate> best)
    {
        var deciding = ImmutableArray.CreateBuilder<string>();
        if (best.Select(static row => row.Platform).Distinct().Count() > 1)
            deciding.Add("the platform, with --platform or --manifest");
        if (best.GroupBy(static row => row.Platform).Any(static rows => rows.Select(static row => row.Kind.Id).Distinct().Count() > 1))
            deciding.Add("the marking of the save memory on the cartridge's board");
        if (best.GroupBy(static row => (row.Platform, row.Kind.Id)).Any(static rows => rows.Count() > 1))
            deciding.Add("a place of the save whose bytes you know, such as a name in letters: it reads right in one layout only");

        return deciding.ToImmutable();
    }
}
