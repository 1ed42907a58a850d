namespace Cartwright.Programs;

/// <summary>Reads the program header table of a 32-bit ELF file and checks every number in it against the file.</summary>
/// <param name="image">The whole file, at least an ELF header long.</param>
/// <param name="isBigEndian">True for high byte first.</param>
/// <param name="log">Where findings go.</param>
internal sealed class ElfSegmentTable(ReadOnlyMemory<byte> image, bool isBigEndian, ReaderLog log)
{
    private const int OffsetAt = 0x1C;
    private const int SectionsAt = 0x20;
    private const int EntrySizeAt = 0x2A;
    private const int CountAt = 0x2C;
    private const int SectionHeaderSize = 0x28;
    private const int SectionInfoAt = 0x1C;

    // This count says that the true one did not fit its 16 bits.
    private const ushort CountIsElsewhere = 0xFFFF;

    private ElfFields Fields => new(image.Span, isBigEndian);

    /// <summary>All load segments in table order whose numbers fit the file; findings say which do not.</summary>
    public List<ElfSegment> ReadLoads()
    {
        var loads = new List<ElfSegment>();
        var fields = Fields;
        var (offset, size, count) = (fields.Word(OffsetAt), fields.Half(EntrySizeAt), Count());
        if (count is null or 0 || !TableFits(offset, size, count.Value)) return loads;
        for (var i = 0L; i < count; i++)
        {
            var segment = ElfSegment.Read(fields, (int)(offset + (i * size)));
            if (segment.IsLoad && IsSound(segment)) loads.Add(segment);
        }

        return loads;
    }

    private long? Count()
    {
        var fields = Fields;
        var count = fields.Half(CountAt);
        if (count != CountIsElsewhere) return count;
        var sections = fields.Word(SectionsAt);
        if (sections != 0 && (long)sections + SectionHeaderSize <= image.Length) return fields.Word((int)sections + SectionInfoAt);
        log.Add(
            ProgramFindings.ElfTable,
            log.At(CountAt),
            "The number of program headers is given as 0xFFFF, and there is no section header 0 to hold the true number.",
            "a section header table inside the file");
        return null;
    }

    private bool TableFits(uint offset, ushort size, long count)
    {
        if (size < ElfSegment.HeaderSize)
        {
            log.Add(ProgramFindings.ElfTable, log.At(EntrySizeAt), $"A program header is given as {ProgramWords.Size(size)}.", $"at least {ProgramWords.Size(ElfSegment.HeaderSize)}");
            return false;
        }

        // The last entry has to lie inside the file; 32 bits times 16 bits plus 32 bits cannot overflow 64.
        if (offset + (count * size) <= image.Length) return true;
        log.Add(
            ProgramFindings.ElfTable,
            log.At(OffsetAt),
            $"{count} program headers of {ProgramWords.Size(size)} at offset {ProgramWords.Address(offset)} do not fit in a file of {ProgramWords.Size(image.Length)}.",
            "a program header table inside the file");
        return false;
    }

    private bool IsSound(ElfSegment segment)
    {
        if (segment.FileSize > segment.MemorySize)
        {
            log.Add(
                ProgramFindings.ElfSizes,
                log.At(segment.At),
                $"The segment holds {ProgramWords.Size(segment.FileSize)} in the file but only {ProgramWords.Size(segment.MemorySize)} in memory.",
                "a memory size (p_memsz) not below the file size (p_filesz)");
            return false;
        }

        if (segment.FileSize == 0 || (long)segment.Offset + segment.FileSize <= image.Length) return true;
        log.Add(
            ProgramFindings.ElfOutside,
            log.At(segment.At),
            $"{ProgramWords.Size(segment.FileSize)} at offset {ProgramWords.Address(segment.Offset)} do not lie inside a file of {ProgramWords.Size(image.Length)}.",
            "bytes inside the file");
        return false;
    }
}
