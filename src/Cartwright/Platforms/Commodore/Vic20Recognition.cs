using System.Buffers.Binary;

namespace Cartwright.Platforms.Commodore;

/// <summary>Knows a VIC-20 cartridge by its bytes.</summary>
internal static class Vic20Recognition
{
    private const int LoadAddressLength = 2;
    private const int LoadStep = 0x400;
    private const int OwnJumps = 2;
    private const byte Jump = 0x4C;
    private const byte Call = 0x20;

    /// <summary>Whether the load address $A000 stands before the header.</summary>
    public static bool HasMarkedLoadAddress(ReadOnlySpan<byte> file) => file.StartsWith((ReadOnlySpan<byte>)[0x00, 0xA0]) && HasMark(file[LoadAddressLength..], 0);

    /// <summary>The load address a file without a mark seems to begin with; null where it does not.</summary>
    /// <param name="file">The file.</param>
    public static int? LoadAddress(ReadOnlySpan<byte> file)
    {
        if (file.Length <= StartHeader.Length || HasMark(file, 0))
        {
            return null;
        }

        var address = BinaryPrimitives.ReadUInt16LittleEndian(file);
        var body = file[LoadAddressLength..];
        var isBlock = address is (>= 0x2000 and < 0x8000) or (>= 0xA000 and < 0xC000);
        var left = CommodoreMapping.WindowSize - (address % CommodoreMapping.WindowSize);
        return isBlock && address % LoadStep == 0 && body.Length <= left && Jumps(body, address) >= OwnJumps ? address : null;
    }

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (CrtFile.Read(file, Vic20Platform.Signature) is { } container)
        {
            return new RecognitionClaim(Certainty.Exact, container.Words) { PrefixLength = Math.Min(container.PrefixLength, file.Length), Variant = Variant(container) };
        }

        var prefix = HasMarkedLoadAddress(file) ? LoadAddressLength : 0;
        var image = file[prefix..];
        if (HasMark(image, 0))
        {
            return Marked(prefix, StartHeader.MarkAt) with { Variant = image.Length <= CommodoreMapping.WindowSize ? "block-5" : null };
        }

        return HasMark(image, CommodoreMapping.WindowSize) ? Marked(prefix, CommodoreMapping.WindowSize + StartHeader.MarkAt)
            : LoadAddress(file) is { } address ? new RecognitionClaim(Certainty.Candidate, $"the load address {StartChecks.Hex(address)}, and jumps into what follows it") { PrefixLength = LoadAddressLength }
            : null;
    }

    private static RecognitionClaim Marked(int prefix, int at) =>
        new(Certainty.Exact, $"A0CBM, the last three letters with bit 7 set, at 0x{at:X4}") { PrefixLength = prefix };

    private static bool HasMark(ReadOnlySpan<byte> image, int offset) =>
        image.Length > offset + StartHeader.Length && image[(offset + StartHeader.MarkAt)..].StartsWith(StartHeader.Vic20Mark);

    private static int Jumps(ReadOnlySpan<byte> body, int address)
    {
        var count = 0;
        for (var at = 0; at + 3 <= body.Length; at++)
        {
            if (body[at] is Jump or Call && BinaryPrimitives.ReadUInt16LittleEndian(body[(at + 1)..]) is var target && target >= address && target < address + body.Length)
            {
                count++;
            }
        }

        return count;
    }

    private static string? Variant(CrtFile container)
    {
        var addresses = container.Runs.Select(static run => run.Packet.Address).Distinct().ToList();
        return Vic20Mappings.All.FirstOrDefault(mapping => mapping.Windows.Select(static window => window.Address).SequenceEqual(addresses))?.Name;
    }
}
