using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.TestImages;

namespace Cartwright.Cli;

/// <summary><c>cartwright pattern retention</c></summary>
internal static class RetentionVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var expected = new Argument<string>("expected") { Description = "The test image that was written into the memory: `memory` or `memory-inverse`." };
        var before = new Argument<string>("before") { Description = "Read at once after writing." };
        var after = new Argument<string>("after") { Description = "Read after the power was off: 10 seconds, an hour, a night." };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "retention",
            "Says what a save memory kept while its power was off.",
            "cartwright pattern retention memory.U1.bin at-once.bin next-day.bin")
        {
            expected, before, after, json,
        };
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            var file = parsed.GetRequiredValue(after);
            var (written, first, last) = (ImageInput.Read(parsed.GetRequiredValue(expected), log), ImageInput.Read(parsed.GetRequiredValue(before), log), ImageInput.Read(file, log));
            if (written is not null && first is not null && last is not null && AreAlike(written, [first, last], parsed.GetRequiredValue(expected), file, log))
            {
                Write(RetentionCheck.Compare(written, first, last), file, parsed.GetValue(json), output, log);
                ImageInput.WriteFindings(errors, log.ToSorted());
                return log.HasErrors ? ExitCode.Found : ExitCode.Done;
            }

            ImageInput.WriteFindings(errors, log.ToSorted());
            return ExitCode.Refused;
        });
        return verb;
    }

    private static bool AreAlike(byte[] written, byte[][] reads, string image, string file, FindingLog log)
    {
        if (!MemoryImage.IsWhole(written))
        {
            log.Add(TestImageFindings.NoMemoryImage, new SourcePlace(image), $"{image} is no image of the kinds `memory` and `memory-inverse`, as its blocks do not go with their CRC-32.");
        }

        foreach (var read in reads.Where(read => read.Length != written.Length))
        {
            log.Add(TestImageFindings.UnequalLengths, new SourcePlace(file), $"A read has {ByteSize.Describe(read.Length)}, and {ByteSize.Describe(written.Length)} were written.");
        }

        return !log.HasErrors;
    }

    private static void Write(RetentionCheck check, string file, bool json, TextWriter output, FindingLog log)
    {
        var place = new SourcePlace(file);
        if (check.WrongBefore > 0)
        {
            log.Add(TestImageFindings.WrongBefore, place, $"{check.WrongBefore} of {check.Size} bytes were wrong when they were read at once.");
        }

        if (!check.IsKept)
        {
            log.Add(TestImageFindings.NotKept, place, check.IsForgotten
                ? "The memory has forgotten everything: what it holds agrees with the test image no better than chance."
                : $"{check.BitsToZero + check.BitsToOne} bits in {check.BlocksChanged} blocks of 256 bytes changed while the power was off: {check.BitsToOne} became one, {check.BitsToZero} became zero.");
        }

        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteBoolean("kept", check.IsKept);
                writer.WriteBoolean("forgotten", check.IsForgotten);
                writer.WriteNumber("size", check.Size);
                writer.WriteNumber("wrongBefore", check.WrongBefore);
                writer.WriteNumber("bitsToOne", check.BitsToOne);
                writer.WriteNumber("bitsToZero", check.BitsToZero);
                writer.WriteNumber("blocksChanged", check.BlocksChanged);
                Json.WriteFindings(writer, log.ToSorted());
            });
        }
        else if (check.IsKept)
        {
            output.WriteLine($"All {ByteSize.Words(check.Size)} kept. A good read says nothing of longer times, of a weaker cell, or of the cold.");
        }
    }
}
