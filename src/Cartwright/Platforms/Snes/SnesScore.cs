using System.Buffers.Binary;
using System.Globalization;

namespace Cartwright.Platforms.Snes;

// Points for one place a header can lie at (after SNESdev Wiki, ROM header, and fullsnes, cartridge chapters). With these weights right
// places of homebrew images have 10 and more, wrong ones and images of other consoles 5 at most.
internal readonly record struct SnesScore
{
    /// <summary>Points that are enough.</summary>
    public const int Threshold = 8;

    private const int SumPoints = 6;

    // Offsets from the header's first byte, which the processor sees at $00:FFB0.
    private const int ModeAt = 0x25;
    private const int RomSizeAt = 0x27;
    private const int RamSizeAt = 0x28;
    private const int CountryAt = 0x29;
    private const int DeveloperAt = 0x2A;
    private const int PairAt = 0x2C;
    private const int ResetAt = 0x4C;
    private const int Length = 0x50;
    private const int TitleLength = 21;

    private readonly byte _mode;
    private readonly bool _modeFits;
    private readonly ushort _reset;
    private readonly int? _opcode;
    private readonly bool _isPair;

    private SnesScore(SnesImage image, SnesMapping mapping)
    {
        Mapping = mapping;
        var header = image.Slice(mapping.Header, Length);
        var complement = BinaryPrimitives.ReadUInt16LittleEndian(header[PairAt..]);
        var checksum = BinaryPrimitives.ReadUInt16LittleEndian(header[(PairAt + 2)..]);
        _mode = header[ModeAt];
        _modeFits = (_mode & 0xE0) == 0x20 && mapping.Modes.Contains((byte)(_mode & 0x0F));
        _reset = BinaryPrimitives.ReadUInt16LittleEndian(header[ResetAt..]);
        _opcode = _reset >= 0x8000 && mapping.Offset(_reset) is var at && at < image.Length ? image[at] : null;
        _isPair = (complement ^ checksum) == 0xFFFF;
        var points = (_isPair ? checksum is 0x0000 or 0xFFFF ? 1 : 4 : 0)
            + (_modeFits ? 3 : -2)
            + (_reset >= 0x8000 ? 2 : -4) + OpcodePoints(_opcode)
            + (SizeFits(header[RomSizeAt], image.Length) ? 2 : 0)
            + (header[RamSizeAt] <= 8 ? 1 : 0)
            + (header[CountryAt] <= 0x14 ? 1 : 0)
            + (JisTextCodec.IsText(header.Slice(SnesMapping.TitleInHeader, TitleLength)) ? 1 : 0)
            + (header[DeveloperAt] == 0x33 && IsCode(header.Slice(2, 4)) ? 1 : 0);
        // The sum takes the whole image: not where it could not help any more.
        SumIsRight = points + SumPoints >= Threshold && image.Sum(mapping.Header + PairAt) == checksum;
        Points = points + (SumIsRight ? SumPoints : 0);
    }

    public SnesMapping Mapping { get; }

    public int Points { get; }

    public bool SumIsRight { get; }

    /// <summary>What was seen, in words.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture,
        $"{Points} points, of which {Threshold} are enough, for a header at 0x{Mapping.Title:X6} ({Mapping.Name}): map mode ${_mode:X2}{(_modeFits ? "" : ", which belongs elsewhere")}, RESET ${_reset:X4}{Opcode}, {Checksum}");

    private string Opcode => _opcode is { } opcode ? string.Create(CultureInfo.InvariantCulture, $" with opcode {opcode:X2} there") : "";

    private string Checksum => SumIsRight ? "the checksum is right" : _isPair ? "checksum and complement belong together, but the sum is another" : "no checksum was stored";

    /// <summary>The points of a place; null where the image ends before.</summary>
    public static SnesScore? Of(SnesImage image, SnesMapping mapping) =>
        mapping.Header + Length <= image.Length ? new SnesScore(image, mapping) : null;

    /// <summary>Whether this place is rather the header's than another.</summary>
    public bool Beats(SnesScore other, int length)
    {
        var odd = length % 0x10000 == 0x8000;
        var large = length > SnesSizes.Half;
        return (Points, SumIsRight, odd && !Mapping.High, Mapping.Extended == large, -Mapping.Title)
            .CompareTo((other.Points, other.SumIsRight, odd && !other.Mapping.High, other.Mapping.Extended == large, -other.Mapping.Title)) > 0;
    }

    // SEI, CLC, SEC, STZ, JMP near and far begin programs; BRK, COP, STP and erased bytes do not.
    private static int OpcodePoints(int? opcode) => opcode switch
    {
        0x78 or 0x18 or 0x38 or 0x9C or 0x4C or 0x5C => 2,
        0x00 or 0x02 or 0xDB or 0xFF => -2,
        _ => 0,
    };

    private static bool SizeFits(byte code, int length) =>
        code is >= 0x05 and <= 0x0D && 1024L << code is var size && size >= length && length > size / 2;

    private static bool IsCode(ReadOnlySpan<byte> code)
    {
        foreach (var letter in code)
        {
            if (letter != ' ' && !char.IsAsciiLetterOrDigit((char)letter))
            {
                return false;
            }
        }

        return true;
    }
}
