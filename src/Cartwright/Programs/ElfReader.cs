using Cartwright.Findings;

namespace Cartwright.Programs;

/// <summary>Reads the load segments of a 32-bit ELF file of either byte order.</summary>
/// <remarks>Layout from memory of the System V gABI; structures and numbers checked in elf.h of the GNU C library.</remarks>
/// <param name="image">The whole file.</param>
/// <param name="options">Which address counts, and the largest span.</param>
/// <param name="log">Where findings go.</param>
internal sealed class ElfReader(ReadOnlyMemory<byte> image, ProgramReadOptions options, ReaderLog log)
{
    private const int HeaderSize = 0x34;
    private const int ClassAt = 4;
    private const int DataAt = 5;
    private const int VersionAt = 6;

    private bool _isBigEndian;

    /// <summary>The bytes every ELF file begins with.</summary>
    public static ReadOnlySpan<byte> Magic => [0x7F, (byte)'E', (byte)'L', (byte)'F'];

    private ElfFields Fields => new(image.Span, _isBigEndian);

    /// <summary>Reads the file; null when an error was logged.</summary>
    public ProgramFile? Read()
    {
        if (!IsElf32() || !IsExecutable()) return null;
        var loads = new ElfSegmentTable(image, _isBigEndian, log).ReadLoads();
        if (log.HasErrors) return null;
        if (!loads.Exists(static load => load.FileSize > 0))
        {
            log.Add(ProgramFindings.ElfNothingToLoad, log.Whole, "The ELF file has no load segment that holds bytes.", "at least one PT_LOAD program header with a file size");
            return null;
        }

        var segments = new SegmentMerger(image, index => log.At(index), log).Merge(ToRuns(loads), options.LargestSpan);
        if (log.HasErrors) return null;
        WarnOfHeaderInRom(segments[0]);
        return new ProgramFile(log.File, ProgramFormat.Elf, segments, Fields.Word(0x18), Machine);
    }

    private string Machine => ElfMachines.Words(Fields.Half(0x12), _isBigEndian);

    private bool IsElf32()
    {
        var bytes = image.Span;
        if (!bytes.StartsWith(Magic)) return Refuse(ProgramFindings.ElfMagic, 0, "The file does not begin with 7F 'ELF'.", "7F 45 4C 46 as the first four bytes");
        if (bytes.Length < HeaderSize) return Refuse(ProgramFindings.ElfTruncated, bytes.Length, $"The file ends after {ProgramWords.Size(bytes.Length)}, inside the ELF header.", ProgramWords.Size(HeaderSize));
        if (bytes[DataAt] is not (1 or 2)) return Refuse(ProgramFindings.ElfByteOrder, DataAt, $"The byte order is given as {bytes[DataAt]}.", "1 (little-endian) or 2 (big-endian)");
        _isBigEndian = bytes[DataAt] == 2;
        if (bytes[ClassAt] == 2) return Refuse(ProgramFindings.ElfClass, ClassAt, $"The file is a 64-bit ELF file for {Machine}.", "a 32-bit ELF file");
        if (bytes[ClassAt] != 1) return Refuse(ProgramFindings.ElfClass, ClassAt, $"The ELF class is given as {bytes[ClassAt]}.", "1 (32-bit)");
        if (bytes[VersionAt] == 1 && Fields.Word(0x14) == 1) return true;
        return Refuse(ProgramFindings.ElfVersion, VersionAt, $"The ELF version is given as {bytes[VersionAt]} and {Fields.Word(0x14)}.", "1 and 1");
    }

    private bool IsExecutable()
    {
        const int typeAt = 0x10;
        var type = Fields.Half(typeAt);
        if (type == 1) return Refuse(ProgramFindings.ElfRelocatable, typeAt, "The file is an object file: it has not been linked.", "a linked program (ELF type 2)");
        if (type is not (2 or 3)) return Refuse(ProgramFindings.ElfKind, typeAt, $"The file is of ELF type {type}{(type == 4 ? ", a memory dump" : "")}.", "a linked program (ELF type 2)");
        if (type == 3) log.Add(ProgramFindings.ElfNotFixed, log.At(typeAt), "The file is position-independent (ELF type 3): its addresses are not final.", "a program linked to fixed addresses (ELF type 2)");
        return true;
    }

    private bool Refuse(FindingRule rule, long offset, string message, string expected)
    {
        log.Add(rule, log.At(offset), message, expected);
        return false;
    }

    private List<ProgramRun> ToRuns(List<ElfSegment> loads)
    {
        var useRunAddress = options.ElfLoad == ElfLoad.Virtual || LoadAddressesAreMissing(loads);
        var runs = new List<ProgramRun>();
        var total = 0L;
        foreach (var load in loads)
        {
            var address = useRunAddress ? load.RunAddress : load.LoadAddress;
            if (load.FileSize == 0 || !EndsInReach(load, address)) continue;
            runs.Add(new ProgramRun(address, (int)load.Offset, (int)load.FileSize));
            total += load.FileSize;
        }

        // Segments may name the same bytes of the file over and over: what they hold together bounds the work that follows.
        if (total <= options.LargestSpan) return runs;
        log.Add(
            ProgramFindings.SpanTooLarge,
            log.Whole,
            $"The load segments hold {ProgramWords.Size(total)} together.",
            $"at most {ProgramWords.Size(options.LargestSpan)}");
        return [];
    }

    private bool EndsInReach(ElfSegment load, long address)
    {
        const long end = 1L << 32;
        if (address + load.FileSize <= end) return true;
        return Refuse(
            ProgramFindings.ElfPastEnd,
            load.At,
            $"{ProgramWords.Size(load.FileSize)} at {ProgramWords.Address(address)} run past {ProgramWords.Address(end - 1)}.",
            "a segment that ends inside the 32-bit address space");
    }

    private bool LoadAddressesAreMissing(List<ElfSegment> loads)
    {
        var areMissing = loads.TrueForAll(static load => load.LoadAddress == 0) && loads.Exists(static load => load.RunAddress != 0);
        if (areMissing) log.Add(ProgramFindings.ElfNoLoadAddress, log.At(loads[0].At), "Every load address (p_paddr) is 0; the run addresses (p_vaddr) were used.");
        return areMissing;
    }

    private void WarnOfHeaderInRom(Segment lowest)
    {
        if (!lowest.Bytes.Span.StartsWith(Magic)) return;
        log.Add(
            ProgramFindings.ElfHeaderInRom,
            lowest.Place,
            $"The lowest segment, at {ProgramWords.Address(lowest.Address)}, begins with the ELF header itself.",
            "the program's first byte");
    }
}
