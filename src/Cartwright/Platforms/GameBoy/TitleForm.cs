using System.Buffers;
using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoy;

/// <summary>
/// How the 16 bytes at 0x134 are shared. A title has 16 letters; 15 when the last byte is a CGB flag; 11 when four bytes before
/// that are a manufacturer code (Pan Docs, The Cartridge Header). What the manifest states decides, and then what is there.
/// </summary>
public static class TitleForm
{
    private const int Start = 0x34;
    private const int CodeAt = 0x3F;
    private const int CodeLength = 4;
    private const int FlagAt = 0x43;
    private const int WholeLength = 16;
    private const int ShortLength = CodeAt - Start;
    private const string RawMark = "hex ";

    private static readonly SearchValues<byte> CodeLetters = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"u8);

    /// <summary>Whether there is a manufacturer code: stated, or there already, and the title leaves the zero byte that marks it.</summary>
    /// <param name="context">What is known of the header.</param>
    public static bool HasCode(HeaderContext context) =>
        context["manufacturerCode"] is not null
        || (context["title"] is null && GivenLength(context) < ShortLength && LooksLikeCode(context.Held));

    /// <summary>Whether the last byte is a CGB flag: stated, or there already and no title has its 16th letter in it.</summary>
    /// <param name="context">What is known of the header, the manufacturer code among it.</param>
    public static bool HasFlag(HeaderContext context) =>
        context["cgbFlag"] is not null
        || context["manufacturerCode"] is not null
        || (GivenLength(context) < WholeLength && LooksLikeFlag(context.Held));

    /// <summary>Whether the title has all 16 bytes.</summary>
    /// <param name="context">What is known of the header, flag and code among it.</param>
    public static bool IsWhole(HeaderContext context) => context["cgbFlag"] is null && context["manufacturerCode"] is null;

    /// <summary>Whether the title ends before the CGB flag.</summary>
    /// <param name="context">What is known of the header, flag and code among it.</param>
    public static bool EndsAtFlag(HeaderContext context) => context["cgbFlag"] is not null && context["manufacturerCode"] is null;

    /// <summary>Whether the title ends before the manufacturer code.</summary>
    /// <param name="context">What is known of the header, the code among it.</param>
    public static bool EndsAtCode(HeaderContext context) => context["manufacturerCode"] is not null;

    /// <summary>Whether a reader takes bytes for a manufacturer code: four capitals or digits after a zero byte.</summary>
    /// <param name="header">The header from its first byte (0x100).</param>
    public static bool LooksLikeCode(ReadOnlySpan<byte> header) =>
        header.Length > FlagAt && header[CodeAt - 1] == 0 && !header.Slice(CodeAt, CodeLength).ContainsAnyExcept(CodeLetters);

    // 0xFF is what erased flash and padding hold, no flag.
    private static bool LooksLikeFlag(ReadOnlySpan<byte> header) => header.Length > FlagAt && header[FlagAt] is >= 0x80 and < 0xFF;

    private static int GivenLength(HeaderContext context)
    {
        var title = context["title"] ?? context.Cart(CartKey.Title)?.Text ?? "";
        return title.StartsWith(RawMark, StringComparison.Ordinal) && title.Length > WholeLength ? (title.Length - RawMark.Length) / 2 : title.Length;
    }
}
