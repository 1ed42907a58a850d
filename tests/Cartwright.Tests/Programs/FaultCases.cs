using Cartwright.Programs;

namespace Cartwright.Tests.Programs;

/// <summary>One faulty file, at least, for each finding a program file can give.</summary>
internal static class FaultCases
{
    private const string End = Records.HexEnd;
    private static readonly string Data = Records.Hex(0, 0, 0x55);
    private static readonly string SData = Records.S(1, 0, 0x55);
    private static readonly string SEnd = Records.S(9, 0);

    public static IReadOnlyList<FaultCase> All { get; } = [.. General(), .. IntelHex(), .. SRecord(), .. Elf()];

    private static IEnumerable<FaultCase> General() =>
    [
        new("empty file", ProgramFindings.Empty, "game.bin", []),
        FaultCase.Hex("S-records named .hex", ProgramFindings.NameMisleads, 0, SData, SEnd),
        FaultCase.S("Intel HEX named .srec", ProgramFindings.NameMisleads, 0, Data, End),
        FaultCase.Hex("Intel HEX stated as raw", ProgramFindings.RawTakesText, 0, Data, End) with { Format = ProgramFormat.Raw },
        FaultCase.Hex("Intel HEX stated as S-record", ProgramFindings.OtherFormat, 0, Data, End) with { Format = ProgramFormat.SRecord },
        FaultCase.Hex("S-record stated as Intel HEX", ProgramFindings.OtherFormat, 0, SData, SEnd) with { Format = ProgramFormat.IntelHex },
        new("word addresses for a raw file", ProgramFindings.AddressUnitUnused, "game.bin", [1], AddressUnit: 2),
        FaultCase.Hex("only an end record", ProgramFindings.NoData, 0, End),
        FaultCase.Hex("stray record", ProgramFindings.SpanTooLarge, 3, Data, Records.Hex(4, 0, 0xFF, 0xFF), Data, End),
        FaultCase.Hex("two values", ProgramFindings.OverlapDiffers, 2, Data, Records.Hex(0, 0, 0x56), End),
        FaultCase.S("one value twice", ProgramFindings.OverlapSame, 2, SData, SData, SEnd),
        FaultCase.Hex("half steps", ProgramFindings.AddressesCountWords, 3, Records.Hex(0, 0, 1, 2), Records.Hex(0, 1, 3, 4), Records.Hex(0, 2, 5, 6), End),
        FaultCase.S("half steps", ProgramFindings.AddressesCountWords, 3, Records.S(2, 0, 1, 2), Records.S(2, 1, 3, 4), Records.S(2, 2, 5, 6), SEnd),
        FaultCase.Hex("serials", ProgramFindings.SerialList, 3, Records.Hex(0, 9, 1), Records.Hex(0, 9, 2), Records.Hex(0, 9, 3), End),
    ];

    // In the order of the checks within a record; the last rows are from the Intel specification's own fixed lengths.
    private static IEnumerable<FaultCase> IntelHex() =>
    [
        FaultCase.Hex("text before the mark", ProgramFindings.RecordMark, 2, Data, " " + Records.Hex(0, 1, 1), End),
        FaultCase.Hex("an S-record among the records", ProgramFindings.RecordMark, 2, Data, SData, End),
        FaultCase.Hex("byte outside ASCII", ProgramFindings.RecordDigit, 2, Data, ":0100\xE9\xE9" + "0055AA", End),
        FaultCase.Hex("not a digit before an odd count", ProgramFindings.RecordDigit, 1, ":01000000G", End),
        FaultCase.Hex("odd digits", ProgramFindings.RecordDigitCount, 2, Data, ":0100010055A", End),
        FaultCase.Hex("too few digits", ProgramFindings.RecordDigitCount, 2, Data, ":01000000", End),
        FaultCase.Hex("mark alone", ProgramFindings.RecordDigitCount, 2, Data, ":", End),
        FaultCase.Hex("count above the line", ProgramFindings.RecordCount, 1, ":0200000055AA", End),
        FaultCase.Hex("count below the line", ProgramFindings.RecordCount, 1, ":000000005500", End),
        FaultCase.Hex("endless line", ProgramFindings.RecordCount, 1, ":01" + new string('0', 5000), End),
        FaultCase.Hex("checksum", ProgramFindings.RecordChecksum, 1, ":0100000055AB", End),
        FaultCase.Hex("checksum before type", ProgramFindings.RecordChecksum, 2, Data, ":0000000600", End),
        FaultCase.Hex("unknown type", ProgramFindings.RecordType, 2, Data, Records.Hex(6, 0), End),
        FaultCase.Hex("short type 02", ProgramFindings.RecordTypeLength, 2, Data, ":0100000212EB", End),
        FaultCase.Hex("long type 04", ProgramFindings.RecordTypeLength, 2, Data, ":03000004000100F8", End),
        FaultCase.Hex("short type 03", ProgramFindings.RecordTypeLength, 2, Data, Records.Hex(3, 0, 1), End),
        FaultCase.Hex("offset of type 04", ProgramFindings.RecordOffsetUnused, 1, Records.Hex(4, 5, 0, 0), Data, End),
        FaultCase.Hex("past FFFFh", ProgramFindings.RecordPastEnd, 2, Data, Records.Hex(0, 0xFFFF, 1, 2), End),
        FaultCase.Hex("segment wrap", ProgramFindings.RecordWraps, 2, Records.Hex(2, 0, 0, 0), Records.Hex(0, 0xFFFF, 1, 2), End),
        FaultCase.Hex("blank lines only", ProgramFindings.NoRecord, 0, "", " "),
        FaultCase.Hex("no end record", ProgramFindings.EndMissing, 1, Data),
        FaultCase.Hex("second file", ProgramFindings.TextAfterEnd, 4, Data, End, "", Data, End),
        FaultCase.Hex("two starts", ProgramFindings.StartTwice, 3, Data, Records.Hex(5, 0, 0, 0, 0, 1), Records.Hex(3, 0, 0, 0, 0, 2), End),
    ];

    private static IEnumerable<FaultCase> SRecord() =>
    [
        FaultCase.S("no type", ProgramFindings.RecordType, 2, SData, "Sx030000FC", SEnd),
        FaultCase.S("not a digit", ProgramFindings.RecordDigit, 2, SData, "S1040001Z5A5", SEnd),
        FaultCase.S("odd digits", ProgramFindings.RecordDigitCount, 2, SData, "S10400015A5", SEnd),
        FaultCase.S("count", ProgramFindings.RecordCount, 2, SData, "S105000155A5", SEnd),
        FaultCase.S("checksum", ProgramFindings.RecordChecksum, 2, SData, "S104000155A6", SEnd),
        FaultCase.S("no room for the address", ProgramFindings.RecordTypeLength, 2, SData, "S3030000FC", SEnd),
        FaultCase.S("count record with data", ProgramFindings.RecordTypeLength, 2, SData, Records.S(5, 1, 9), SEnd),
        FaultCase.S("past FFFFh", ProgramFindings.RecordPastEnd, 2, SData, Records.S(1, 0xFFFF, 1, 2), SEnd),
        FaultCase.S("past FFFFFFFFh", ProgramFindings.RecordPastEnd, 1, Records.S(3, 0xFFFFFFFF, 1, 2), SData, SEnd),
        FaultCase.S("no end record", ProgramFindings.TerminatorMissing, 1, SData),
        FaultCase.S("second file", ProgramFindings.TextAfterEnd, 3, SData, SEnd, Records.S(1, 9, 9), SEnd),
        FaultCase.S("lower case mark", ProgramFindings.LineSkipped, 2, SData, Records.S(1, 1, 2).ToLowerInvariant(), SEnd),
        FaultCase.S("text alone", ProgramFindings.LineSkipped, 2, SData, "\x1B[31mred", SEnd),
        FaultCase.S("blank lines only", ProgramFindings.NoRecord, 0, "", " "),
        FaultCase.S("count too high", ProgramFindings.RecordTally, 2, SData, Records.S(5, 2), SEnd),
        FaultCase.S("reserved", ProgramFindings.RecordReserved, 2, SData, Records.S(4, 0), SEnd),
    ];

    private static IEnumerable<FaultCase> Elf() =>
    [
        new("no ELF", ProgramFindings.ElfMagic, "game.elf", new byte[100]),
        new("cut header", ProgramFindings.ElfTruncated, "game.elf", Small().Build()[..40]),
        FaultCase.Elf("64-bit", ProgramFindings.ElfClass, Small().Change(4, 2, 1)),
        FaultCase.Elf("class 3", ProgramFindings.ElfClass, Small().Change(4, 3, 1)),
        FaultCase.Elf("byte order 0", ProgramFindings.ElfByteOrder, Small().Change(5, 0, 1)),
        FaultCase.Elf("version 2", ProgramFindings.ElfVersion, Small().Change(0x14, 2, 4)),
        FaultCase.Elf("object file", ProgramFindings.ElfRelocatable, new ElfBuilder { Type = 1 }.Load(0, 0, [1])),
        FaultCase.Elf("position-independent", ProgramFindings.ElfNotFixed, new ElfBuilder { Type = 3 }.Load(0, 0, [1])),
        FaultCase.Elf("memory dump", ProgramFindings.ElfKind, new ElfBuilder { Type = 4 }.Load(0, 0, [1])),
        FaultCase.Elf("count beyond the file", ProgramFindings.ElfTable, Small().Change(0x2C, 0xFFFE, 2)),
        FaultCase.Elf("count elsewhere, nowhere", ProgramFindings.ElfTable, Small().Change(0x2C, 0xFFFF, 2)),
        FaultCase.Elf("count elsewhere, outside", ProgramFindings.ElfTable, Small().Change(0x2C, 0xFFFF, 2).Change(0x20, 0xFFFFFFF0, 4)),
        FaultCase.Elf("table outside", ProgramFindings.ElfTable, Small().Change(0x1C, 0xFFFFFFF0, 4)),
        FaultCase.Elf("entries too small", ProgramFindings.ElfTable, Small().Change(0x2A, 8, 2)),
        FaultCase.Elf("entries of 0", ProgramFindings.ElfTable, Small().Change(0x2A, 0, 2)),
        FaultCase.Elf("bytes outside", ProgramFindings.ElfOutside, Small().Header(1, 1, 0, 0, 9, 9)),
        FaultCase.Elf("offset overflow", ProgramFindings.ElfOutside, Small().Header(1, 0xFFFFFF00, 0, 0, 0xFFFFFFFF, 0xFFFFFFFF)),
        FaultCase.Elf("more in file than in memory", ProgramFindings.ElfSizes, new ElfBuilder().Load(0, 0, [1, 2], memorySize: 1)),
        FaultCase.Elf("no program header", ProgramFindings.ElfNothingToLoad, new ElfBuilder()),
        FaultCase.Elf("cleared memory only", ProgramFindings.ElfNothingToLoad, new ElfBuilder().Header(1, 0, 0, 0, 0, 9)),
        FaultCase.Elf("no load address", ProgramFindings.ElfNoLoadAddress, new ElfBuilder().Load(0x8000, 0, [1])),
        FaultCase.Elf("header in ROM", ProgramFindings.ElfHeaderInRom, new ElfBuilder().Load(0, 0, [0x7F, 0x45, 0x4C, 0x46])),
        FaultCase.Elf("past FFFFFFFFh", ProgramFindings.ElfPastEnd, Small().Load(0xFFFFFFFF, 0xFFFFFFFF, [1, 2])),
        FaultCase.Elf("two values", ProgramFindings.OverlapDiffers, new ElfBuilder().Load(8, 8, [1]).Load(8, 8, [2])),
        FaultCase.Elf("stray segment", ProgramFindings.SpanTooLarge, new ElfBuilder().Load(0, 0, [1, 2]).Load(0x80000000, 0x80000000, [2])),
    ];

    private static ElfBuilder Small() => new ElfBuilder().Load(0x8000, 0x8000, [1]);
}
