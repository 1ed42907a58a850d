using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>Three bytes of code that the BIOS jumps to: a jump onward, a return, or any others.</summary>
public sealed class JumpSlotCodec : FieldCodec
{
    /// <summary>The word for C9 00 00: nothing happens.</summary>
    public const string Return = "return";

    /// <summary>The word for FB ED 4D: interrupts on again, and back.</summary>
    public const string ReturnFromInterrupt = "return-from-interrupt";

    private const string RawMark = "hex ";
    private const byte Jump = 0xC3;

    private static ReadOnlySpan<byte> ReturnBytes => [0xC9, 0x00, 0x00];

    private static ReadOnlySpan<byte> InterruptBytes => [0xFB, 0xED, 0x4D];

    /// <inheritdoc/>
    public override string Expected => $"an address to jump to such as $8100, `{Return}`, `{ReturnFromInterrupt}`, or `hex` and three bytes of code";

    /// <summary>The address a slot jumps to; null when it holds no jump.</summary>
    /// <param name="slot">The slot's bytes.</param>
    public static int? Target(ReadOnlySpan<byte> slot) => slot[0] == Jump ? slot[1] | (slot[2] << 8) : null;

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) =>
        Target(field) is { } target ? string.Create(CultureInfo.InvariantCulture, $"${target:X4}")
        : field.SequenceEqual(ReturnBytes) ? Return
        : field.SequenceEqual(InterruptBytes) ? ReturnFromInterrupt
        : RawMark + Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        var word = text.Trim();
        if (IsRaw(word))
        {
            return new BytesCodec(field.Length).Write(word[RawMark.Length..], field);
        }

        if (string.Equals(word, Return, StringComparison.OrdinalIgnoreCase))
        {
            ReturnBytes.CopyTo(field);
            return null;
        }

        if (string.Equals(word, ReturnFromInterrupt, StringComparison.OrdinalIgnoreCase))
        {
            InterruptBytes.CopyTo(field);
            return null;
        }

        if (!Number.TryParse(word, out ulong address) || address > ushort.MaxValue)
        {
            return "it is no address of 16 bits and none of the words";
        }

        field[0] = Jump;
        field[1] = (byte)address;
        field[2] = (byte)(address >> 8);
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);
}
