using System.Buffers.Binary;

namespace Cartwright.Patching;

/// <summary>Sizes and checks of a BPS patch. Source: BPS File Format Specification.</summary>
/// <param name="BaseSize">Bytes of the base.</param>
/// <param name="ResultSize">Bytes of the result.</param>
/// <param name="ResultSizeAt">Offset of that size.</param>
/// <param name="Text">The metadata.</param>
/// <param name="ActionsAt">Offset of the first action.</param>
/// <param name="ActionsEnd">Offset of the three CRC-32s at the end.</param>
/// <param name="BaseCrc">CRC-32 of the base.</param>
/// <param name="ResultCrc">CRC-32 of the result.</param>
internal sealed record BpsHeader(
    ulong BaseSize,
    ulong ResultSize,
    int ResultSizeAt,
    string? Text,
    int ActionsAt,
    int ActionsEnd,
    uint BaseCrc,
    uint ResultCrc)
{
    private const int FooterSize = 12;
    private const int BaseCrcAt = 0;
    private const int ResultCrcAt = 4;
    private const int PatchCrcAt = 8;

    // Where the file must give one more byte for a size each: base, result, metadata.
    private const int LeastSize = 4 + 3 + FooterSize;

    /// <summary>Offset of the base's CRC-32.</summary>
    public int BaseCrcOffset => ActionsEnd + BaseCrcAt;

    /// <summary>Offset of the result's CRC-32.</summary>
    public int ResultCrcOffset => ActionsEnd + ResultCrcAt;

    /// <summary>Reads and checks it; null when an error was logged.</summary>
    /// <param name="patch">The whole patch.</param>
    /// <param name="log">Where findings go.</param>
    public static BpsHeader? Read(ReadOnlySpan<byte> patch, PatchLog log)
    {
        if (patch.Length < LeastSize)
        {
            log.Add(PatchFindings.EndsEarly, patch.Length, $"The patch has {PatchWords.Size(patch.Length)}", $"at least {PatchWords.Size(LeastSize)}");
            return null;
        }

        var end = patch.Length - FooterSize;
        return IsIntact(patch, end + PatchCrcAt, log) ? ReadSizes(patch, end, log) : null;
    }

    private static bool IsIntact(ReadOnlySpan<byte> patch, int at, PatchLog log)
    {
        var (stated, found) = (Crc(patch, at), Patch.Crc(patch[..at]));
        return stated == found || log.Refuse(
            PatchFindings.BpsDamaged,
            at,
            $"The bytes of the patch have {PatchWords.Crc(found)}",
            $"{PatchWords.Crc(stated)}, as it states itself");
    }

    private static BpsHeader? ReadSizes(ReadOnlySpan<byte> patch, int end, PatchLog log)
    {
        var cursor = new PatchCursor(patch[..end], PatchFormats.Bps.Magic.Length, log);
        var baseSize = cursor.BpsNumber("the size of the base");
        var resultSizeAt = cursor.Position;
        var resultSize = cursor.BpsNumber("the size of the result");
        var textAt = cursor.Skip(cursor.BpsNumber("the size of the metadata"), "the metadata");
        if (cursor.HasFailed) return null;
        var text = PatchStatement.ToText(patch[textAt..cursor.Position]);
        return new BpsHeader(baseSize, resultSize, resultSizeAt, text, cursor.Position, end, Crc(patch, end + BaseCrcAt), Crc(patch, end + ResultCrcAt));
    }

    private static uint Crc(ReadOnlySpan<byte> patch, int at) => BinaryPrimitives.ReadUInt32LittleEndian(patch[at..]);
}
