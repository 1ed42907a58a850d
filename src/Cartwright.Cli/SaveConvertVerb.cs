using System.Globalization;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save convert</c></summary>
internal static class SaveConvertVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var options = new SaveConvertOptions();
        var json = Verb.JsonOption();
        var verb = new Verb(
            "convert",
            "Brings a save from one layout into another, proves that it leads back, and writes it into a new file.",
            "cartwright save convert game.sav --platform md --from odd-ff --to packed --out game.chip.bin",
            "cartwright save convert game.sav --platform gb --from packed+clock44 --to packed+clock48 --out game.48.sav",
            "cartwright save convert game.sav --platform snes --from packed --to packed --size 2KiB --out game.2k.sav")
        {
            json,
        };
        options.AddTo(verb);
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            if (!ImageInput.TryFind(parsed.GetRequiredValue(options.Platform), errors, out var platform))
            {
                return ExitCode.Refused;
            }

            var file = parsed.GetRequiredValue(options.File);
            var target = Path.GetFullPath(parsed.GetRequiredValue(options.Target));
            var bytes = ImageInput.Read(file, log);
            var request = options.Request(parsed, platform!.Facts.Id, log);
            var made = bytes is not null && request is not null && NewFile.IsFree(target, log) ? new SaveConverter(file, request, log).Convert(bytes) : null;
            var written = made is not null && NewFile.Write(target, made.Bytes, log) is not null;
            Report(written ? made : null, request, target, log, parsed.GetValue(json), output, errors);
            return written ? ExitCode.Done : ExitCode.Refused;
        });
        return verb;
    }

    private static void Report(ConvertedSave? made, SaveConversion? request, string target, FindingLog log, bool json, TextWriter output, TextWriter errors)
    {
        if (json)
        {
            Json.Write(output, writer =>
            {
                if (made is not null)
                {
                    writer.WriteString("written", target);
                    writer.WriteNumber("memoryBefore", made.MemoryBefore);
                    writer.WriteNumber("memoryAfter", made.MemoryAfter);
                    writer.WriteNumber("clockDropped", made.ClockDropped);
                    writer.WriteString("wayBack", WayBack(made, request!));
                    writer.WriteStartObject("digests");
                    BuildRecord.WriteDigest(writer, FileDigest.Of(made.Bytes.Span));
                    writer.WriteEndObject();
                }

                Json.WriteFindings(writer, log.ToSorted());
            });
            return;
        }

        ImageInput.WriteFindings(errors, log.ToSorted());
        if (made is null)
        {
            errors.WriteLine("cartwright: nothing was written.");
            return;
        }

        output.WriteLine($"Written {target}");
        Columns.Write(output, "  ",
        [
            ["layout", $"{request!.From} to {request.To}"],
            ["memory", made.MemoryBefore == made.MemoryAfter ? ByteSize.Describe(made.MemoryAfter) : $"{ByteSize.Describe(made.MemoryBefore)} to {ByteSize.Describe(made.MemoryAfter)}"],
            .. made.Cut is { } cut ? new[] { new[] { "cut off", cut.Fill is null ? "a repetition of the contents" : $"{cut} throughout" } } : [],
            .. made.ClockDropped > 0 ? new[] { new[] { "clock", string.Create(CultureInfo.InvariantCulture, $"left out as you asked: {made.ClockDropped} bytes that only the old file has") } } : [],
            ["way back", WayBack(made, request)],
            ["CRC-32", FileDigest.Of(made.Bytes.Span).Crc32Text],
        ]);
        output.WriteLine($"Converted back and compared: the same bytes{(made.ClockDropped > 0 ? ", but for the clock" : "")}. Keep the old file until the game has shown the progress.");
    }

    private static string WayBack(ConvertedSave made, SaveConversion request) =>
        string.Create(CultureInfo.InvariantCulture, $"--from {request.To} --to {request.From}")
        + (made.MemoryBefore == made.MemoryAfter ? "" : string.Create(CultureInfo.InvariantCulture, $" --size {made.MemoryBefore}"))
        + (made.Cut is { } cut ? $" --pad {cut}" : "")
        + (request.From.ClockLength == 0 && request.To.ClockLength > 0 ? " --drop-clock" : "")
        + (made.ClockDropped > 0 ? ", with a clock at zero" : "")
        + (request.ToWiring is null && request.FromWiring is null ? "" : ", with the lines of --from and --to exchanged");
}
