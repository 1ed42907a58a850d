using Cake.Core;
using Cake.Core.Annotations;
using Cake.Core.Diagnostics;
using Cake.Core.IO;
using Cartwright.Findings;
using Cartwright.Proofs;

namespace Cartwright.Cake;

/// <summary>Proves read-backs equal to a build.</summary>
[CakeAliasCategory("Cartwright")]
[CakeNamespaceImport("Cartwright.Cake")]
public static class ProofAliases
{
    /// <summary>Proves read-backs of a chip or a cartridge equal to what was built, or finds what is wrong.</summary>
    /// <param name="context">The script's context.</param>
    /// <param name="expected">A record, a manifest, a chip file, or with <see cref="ProveSettings.Board"/> a whole ROM.</param>
    /// <param name="readBacks">What was read, in the order in which it was.</param>
    /// <param name="settings">What is known besides; null for nothing.</param>
    /// <example><code>CartProve("dist/lantern-tide.record.json", GetFiles("reads/*.bin"), new ProveSettings { Site = "U1" });</code></example>
    /// <exception cref="CakeException">A finding is an error, or a read differs; findings and verdicts are in the log.</exception>
    [CakeMethodAlias]
    public static ProofReport CartProve(this ICakeContext context, FilePath expected, IEnumerable<FilePath> readBacks, ProveSettings? settings = null)
    {
        var wanted = settings ?? new ProveSettings();
        var log = new FindingLog();
        var report = new CartProver(log).Prove(Task(context, expected, [.. readBacks], wanted));
        FindingReport.Write(context, expected.FullPath, log.ToSorted());
        var chips = report!.Units.SelectMany(static unit => unit.Chips).ToList();
        foreach (var chip in chips)
        {
            var (verbosity, level) = chip.Verdict.Equal ? (Verbosity.Normal, LogLevel.Information) : (Verbosity.Quiet, LogLevel.Error);
            context.Log.Write(verbosity, wanted.FailOnDifference || chip.Verdict.Equal ? level : LogLevel.Warning, "{0}", $"{expected}: {Line(chip)}");
        }

        return report.IsEqual || !wanted.FailOnDifference ? report : throw new CakeException($"{expected}: {Line(chips.First(static chip => !chip.Verdict.Equal))}");
    }

    private static string Line(ProofResult chip) =>
        chip.Verdict.Equal ? $"{chip.Subject.Site} is equal"
        : chip.Verdict.Faults.IsEmpty ? $"{chip.Subject.Site} is not equal, and nothing that is known explains why"
        : $"{chip.Subject.Site} is not equal. {string.Join(' ', chip.Verdict.Faults.Select(fault => FaultWords.Sentence(chip.Subject, fault)))}";

    private static ProofTask Task(ICakeContext context, FilePath expected, List<FilePath> reads, ProveSettings settings)
    {
        var insertions = settings.Insertions;
        if (insertions.Count > 0 && insertions.Count != reads.Count)
        {
            throw new CakeException($"There are {insertions.Count} insertions for {reads.Count} read-backs: give one number for each.");
        }

        return new ProofTask(Full(expected), [.. reads.Select((read, i) => new ProofRead(Full(read), Insertion: insertions.Count > 0 ? insertions[i] : 1))])
        {
            Board = settings.Board,
            Site = settings.Site,
            IsCartridge = settings.IsCartridge,
            Region = settings.Region,
            Part = settings.Part,
            Width = settings.Width,
            WordOrder = settings.WordOrder,
            World = settings.World,
            Old = settings.Old is { } old ? Full(old) : null,
            Releases = [.. settings.Releases.Select(Full)],
            MayDiffer = [.. settings.MayDiffer],
        };

        string Full(FilePath file) => file.MakeAbsolute(context.Environment).FullPath;
    }
}
