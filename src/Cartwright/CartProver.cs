using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright;

/// <summary>Proves read-backs of a chip or a cartridge equal to a build, or finds what is wrong.</summary>
/// <param name="log">Receives what is wrong with the task; a difference is no finding but a result.</param>
public sealed class CartProver(FindingLog log)
{
    /// <summary>Told before each search: the unit, or null, and the chip.</summary>
    public Action<string?, string>? Searching { get; init; }

    /// <summary>Proves.</summary>
    /// <param name="task">What is to be proved.</param>
    /// <param name="cancel">Ends the search early.</param>
    /// <returns>Null when there is an error among the findings.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public ProofReport? Prove(ProofTask task, CancellationToken cancel = default)
    {
        if (ExpectedFile.Read(task, log) is not { } expected)
        {
            return null;
        }

        var files = new ProofFiles(task, expected, log);
        var (reads, settings, others) = (files.Reads(), files.Settings(), files.OtherSites());
        if (log.HasErrors)
        {
            return null;
        }

        var length = reads[0].Reads[0].Bytes.Length;
        var choice = new ProofSubjects(task, expected, others, log);
        var region = default(ExpectedRegion);
        ImmutableArray<ProofSubject> subjects = choice.Chip(length) is { } chip ? [chip]
            : !log.HasErrors && (region = choice.Region(length)) is not null ? choice.Through(region) : [];
        files.CheckLengths(settings, subjects);
        CheckReads(task, reads, subjects, region);
        TellMasked(subjects, expected);
        return log.HasErrors ? null : new ProofReport(expected, [.. reads.Select(unit => Prove(unit.Unit, unit.Reads, subjects, expected, region, settings, cancel))]);
    }

    /// <summary>Finds what reads of the chips could not show.</summary>
    /// <param name="task">What is to be proved; its reads say nothing.</param>
    /// <param name="cancel">Ends the search early.</param>
    /// <returns>A diagnosis for each chip that is meant; empty when there is an error among the findings.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public ImmutableArray<(ProofSubject Subject, ImageDiagnosis Diagnosis)> Diagnose(ProofTask task, CancellationToken cancel = default)
    {
        if (ExpectedFile.Read(task, log) is not { } expected)
        {
            return [];
        }

        var sites = task.Site is null ? expected.Sites.Select(static site => site.Site.Name) : [task.Site];
        var subjects = sites.Select(site => new ProofSubjects(task with { Site = site }, expected, [], log).Chip(0)).OfType<ProofSubject>().ToImmutableArray();
        return log.HasErrors ? [] : [.. subjects.Select(subject => (subject, Diagnose(subject, task.World, cancel)))];
    }

    private ImageDiagnosis Diagnose(ProofSubject subject, WritingWorld world, CancellationToken cancel)
    {
        Searching?.Invoke(null, subject.Site);
        return ImageDiagnosis.Of(subject.Expected, subject.Shape, world, cancel);
    }

    private UnitProof Prove(string? unit, ImmutableArray<ReadBack> reads, ImmutableArray<ProofSubject> subjects, ExpectedCart expected, ExpectedRegion? region, ProofSettings settings, CancellationToken cancel)
    {
        var proofs = ImmutableArray.CreateBuilder<ProofResult>();
        foreach (var subject in subjects)
        {
            Searching?.Invoke(unit, subject.Site);
            var site = expected.Sites.First(site => site.Site.Name == subject.Site).Site;
            var own = region is null ? reads : [.. reads.Select(read => read with { Bytes = SiteView.Of(expected.Board!, site, read.Bytes) })];
            proofs.Add(Prover.Prove(subject, own, settings, cancel));
        }

        return new UnitProof(unit, proofs.ToImmutable());
    }

    private void CheckReads(ProofTask task, ImmutableArray<(string? Unit, ImmutableArray<ReadBack> Reads)> reads, ImmutableArray<ProofSubject> subjects, ExpectedRegion? region)
    {
        foreach (var (read, bytes) in task.Reads.GroupBy(static read => read.Unit).SelectMany(static unit => unit).Zip(reads.SelectMany(static unit => unit.Reads), static (read, back) => (read, back.Bytes)))
        {
            if (region is not null && bytes.Length != region.Bytes.Length)
            {
                log.Add(ProofFindings.OtherLength, new SourcePlace(read.File), $"{read.File} has {ByteSize.Describe(bytes.Length)}, and the region `{region.Name}` has {ByteSize.Describe(region.Bytes.Length)}.");
            }
            else if (region is null && subjects.Any(subject => bytes.Length % subject.Shape.Bytes != 0))
            {
                log.Add(ProofFindings.HalfWord, new SourcePlace(read.File), $"{read.File} has {ByteSize.Describe(bytes.Length)}.");
            }
        }
    }

    private void TellMasked(ImmutableArray<ProofSubject> subjects, ExpectedCart expected)
    {
        if (subjects.Sum(static subject => subject.MayDiffer.Sum(static range => range.Length)) is > 0 and var bytes)
        {
            log.Add(ProofFindings.Masked, new SourcePlace(expected.File), $"{ByteSize.Describe(bytes)} may differ from unit to unit and were left out of the comparison.");
        }
    }
}
