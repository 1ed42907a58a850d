using Cartwright.Findings;

namespace Cartwright.Programs;

/// <summary>Reads a program file of any supported format into segments. Never touches the disk.</summary>
public static class ProgramReader
{
    /// <summary>Reads one program file.</summary>
    /// <param name="file">The file as the user wrote it: shown in findings; its extension counts when the content shows no format.</param>
    /// <param name="bytes">The whole file. Segments may be slices of it.</param>
    /// <param name="format">The format; null to recognise it by content, then by extension, else raw.</param>
    /// <param name="options">Address unit, ELF addresses, largest span.</param>
    /// <param name="log">Where findings go.</param>
    /// <returns>The segments; null when an error was logged.</returns>
    public static ProgramFile? Read(string file, ReadOnlyMemory<byte> bytes, ProgramFormat? format, ProgramReadOptions options, FindingLog log)
    {
        var own = new ReaderLog(file, log);
        var program = Read(bytes, format, options, own);
        own.Close();
        return program;
    }

    private static ProgramFile? Read(ReadOnlyMemory<byte> bytes, ProgramFormat? format, ProgramReadOptions options, ReaderLog log)
    {
        if (bytes.IsEmpty)
        {
            log.Add(ProgramFindings.Empty, log.Whole, "The file is empty (0 bytes).");
            return null;
        }

        var chosen = Choose(bytes.Span, format, log);
        if (log.HasErrors) return null;
        if (options.AddressUnit != 1 && chosen is ProgramFormat.Elf or ProgramFormat.Raw)
        {
            log.Add(ProgramFindings.AddressUnitUnused, log.Whole, $"An address unit of {options.AddressUnit} says nothing about a file read as {ProgramFormats.Words(chosen)}.");
        }

        return chosen switch
        {
            ProgramFormat.IntelHex => new IntelHexReader(bytes, options, log).Read(),
            ProgramFormat.SRecord => new SRecordReader(bytes, options, log).Read(),
            ProgramFormat.Elf => new ElfReader(bytes, options, log).Read(),
            _ => new ProgramFile(log.File, ProgramFormat.Raw, [new Segment(0, bytes, log.At(0))]),
        };
    }

    private static ProgramFormat Choose(ReadOnlySpan<byte> bytes, ProgramFormat? stated, ReaderLog log)
    {
        var shown = ProgramFormats.ByContent(bytes);
        var claimed = ProgramFormats.ByName(log.File);
        if (stated is { } format)
        {
            if (shown is { } other && other != format) Contradict(format, other, log);
            return format;
        }

        if (shown is { } found && claimed is { } name && name != found)
        {
            log.Add(ProgramFindings.NameMisleads, log.Whole, $"The name says {ProgramFormats.Words(name)}, the content is {ProgramFormats.Words(found)}; it was read as {ProgramFormats.Words(found)}.");
        }

        return shown ?? claimed ?? ProgramFormat.Raw;
    }

    private static void Contradict(ProgramFormat stated, ProgramFormat shown, ReaderLog log) => log.Add(
        stated == ProgramFormat.Raw ? ProgramFindings.RawTakesText : ProgramFindings.OtherFormat,
        log.Whole,
        $"The file is to be read as {ProgramFormats.Words(stated)}, but its content is {ProgramFormats.Words(shown)}.");
}
