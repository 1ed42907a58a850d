using System.Globalization;
using System.Text;
using Cartwright.Manifests;
using Cartwright.Ordering;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Knows Mega Drive images by SEGA at the header's start, in whatever order of bytes it shows there.</summary>
internal static class MegaDriveRecognition
{
    private const int Block = 0x4000;
    private const int HalfHeader = MegaDriveHeader.Start / 2;
    private const int HalfText = SystemTypes.Length / 2;

    // Copier 512-byte header description.
    private static ReadOnlySpan<byte> CopierMark => [0xAA, 0xBB];

    /// <summary>The claim on a file, or on the program at the start of a ROM.</summary>
    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        Straight(file, 0)
        ?? (CopierPrefix.Fits(file) || IsMarked(file) ? Straight(file, CopierPrefix.Length) : null)
        ?? Blocks(file, CopierPrefix.Length)
        ?? Blocks(file, 0)
        ?? (file.Length % 2 == 0 ? Shown(file, 0, ImageOrder.OddEvenHalves, Certainty.Structural) : null)
        ?? OneChip(file);

    private static RecognitionClaim? Straight(ReadOnlySpan<byte> file, int prefix) =>
        Shown(file, prefix, ImageOrder.Console, Certainty.Exact) ?? Shown(file, prefix, ImageOrder.ByteSwapped, Certainty.Exact);

    // Sources disagree about which half of a block comes first: the one that shows SEGA is right.
    private static RecognitionClaim? Blocks(ReadOnlySpan<byte> file, int prefix)
    {
        var certainty = prefix > 0 && IsMarked(file) ? Certainty.Exact : Certainty.Structural;
        return file.Length % Block != prefix ? null
            : Shown(file, prefix, ImageOrder.OddEvenBlocks, certainty) ?? Shown(file, prefix, ImageOrder.EvenOddBlocks, certainty);
    }

    private static RecognitionClaim? Shown(ReadOnlySpan<byte> file, int prefix, ImageOrder order, Certainty certainty)
    {
        var body = file[Math.Min(prefix, file.Length)..];
        Span<byte> text = stackalloc byte[SystemTypes.Length];
        if (!Peek(body, order, MegaDriveHeader.Start, text) || !SystemTypes.OpensLock(text) || IsProse(body[..HalfHeader]))
        {
            return null;
        }

        var letters = Encoding.ASCII.GetString(text[..(text.IndexOf("SEGA"u8) + 4)]);
        var undone = order == ImageOrder.Console ? "" : $" once the order {ManifestWords.Word(order)} is undone";
        var behind = prefix > 0 ? string.Create(CultureInfo.InvariantCulture, $" behind a prefix of {prefix} bytes{(IsMarked(file) ? " with the copiers' mark AA BB" : "")}") : "";
        return new RecognitionClaim(certainty, $"`{letters}` at 0x{MegaDriveHeader.Start:X4}{undone}{behind}")
        {
            Order = order,
            PrefixLength = prefix,
            Variant = MegaDrivePlatform.VariantOf(text, body.Length),
        };
    }

    /// <summary>Reads a few bytes as they are in the console's order: no more of an image is brought into order just to look.</summary>
    /// <param name="body">The image without its prefix.</param>
    /// <param name="order">The order it is in.</param>
    /// <param name="offset">The first byte in the console's order: even, and in the first block of 16 KiB.</param>
    /// <param name="text">Receives the bytes; of even length.</param>
    /// <returns>False where the image ends before them.</returns>
    public static bool Peek(ReadOnlySpan<byte> body, ImageOrder order, int offset, Span<byte> text)
    {
        var weave = order switch
        {
            ImageOrder.OddEvenBlocks or ImageOrder.EvenOddBlocks => Block / 2,
            ImageOrder.OddEvenHalves => body.Length / 2,
            _ => 0,
        };
        var (start, length) = weave > 0 ? (offset / 2, text.Length / 2) : (offset, text.Length);
        if (weave + start + length > body.Length)
        {
            return false;
        }

        var first = body.Slice(start, length);
        switch (order)
        {
            case ImageOrder.Console:
                first.CopyTo(text);
                break;
            case ImageOrder.ByteSwapped:
                WordSwap.Swap16(first, text);
                break;
            case ImageOrder.EvenOddBlocks:
                Lanes.Merge(first, body.Slice(weave + start, length), text);
                break;
            default:
                Lanes.Merge(body.Slice(weave + start, length), first, text);
                break;
        }

        return true;
    }

    // Vectors hold bytes no text has: a text that speaks of the console is none of its images.
    private static bool IsProse(ReadOnlySpan<byte> vectors)
    {
        foreach (var value in vectors)
        {
            if (value is not ((>= 0x20 and <= 0x7E) or (byte)'\t' or (byte)'\r' or (byte)'\n'))
            {
                return false;
            }
        }

        return true;
    }

    private static RecognitionClaim? OneChip(ReadOnlySpan<byte> file)
    {
        if (file.Length < HalfHeader + HalfText)
        {
            return null;
        }

        var letters = file.Slice(HalfHeader, HalfText);
        Span<byte> even = stackalloc byte[HalfText];
        Span<byte> odd = stackalloc byte[HalfText];
        foreach (var type in SystemTypes.Known)
        {
            Lanes.Split2(Encoding.ASCII.GetBytes(type.PadRight(SystemTypes.Length)), even, odd);
            if (letters.SequenceEqual(even) || letters.SequenceEqual(odd))
            {
                return OneChip(letters, type, letters.SequenceEqual(even));
            }
        }

        return null;
    }

    private static RecognitionClaim OneChip(ReadOnlySpan<byte> letters, string type, bool isUpper)
    {
        var (here, other) = isUpper
            ? ("even bytes, of the upper chip (D15-D8)", "lower chip (D7-D0)")
            : ("odd bytes, of the lower chip (D7-D0)", "upper chip (D15-D8)");
        return new RecognitionClaim(Certainty.Candidate, $"`{Encoding.ASCII.GetString(letters)}` at 0x{HalfHeader:X4}, every second letter of `{type}`: the {here}; the file of the {other} is needed as well");
    }

    private static bool IsMarked(ReadOnlySpan<byte> file) => file.Length > 8 && file[8..].StartsWith(CopierMark);
}
