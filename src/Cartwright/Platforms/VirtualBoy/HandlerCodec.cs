using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>The 16 bytes of code of a handler: an address stands for the stub that jumps to it.</summary>
internal sealed class HandlerCodec : FieldCodec
{
    /// <summary>Bytes of a handler.</summary>
    public const int Length = 16;

    /// <summary>The word for sixteen zero bytes.</summary>
    public const string None = "none";

    /// <summary>The word for a lone return from interrupt.</summary>
    public const string Return = "return";

    private static readonly BytesCodec Raw = new(Length);

    /// <summary>Return from interrupt, low byte first (from memory).</summary>
    public static ReadOnlySpan<byte> ReturnCode => [0x00, 0x64];

    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names { get; } =
        [new NamedValue(0, None, "zero bytes"), new NamedValue(1, Return, "a lone return from interrupt (from memory)")];

    /// <inheritdoc/>
    public override string Expected => $"an even address to jump to such as $07000000, `{None}`, `{Return}`, or {Raw.Expected}";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        var words = !field.ContainsAnyExcept((byte)0) ? None
            : field.StartsWith(ReturnCode) ? Return
            : V810Jump.StubTarget(field) is { } target ? string.Create(CultureInfo.InvariantCulture, $"0x{target:X8}")
            : null;
        Span<byte> copy = stackalloc byte[Length];
        return words is not null && Write(words, copy) is null && copy.SequenceEqual(field) ? words : Raw.Read(field);
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        var isReturn = string.Equals(text, Return, StringComparison.OrdinalIgnoreCase);
        if (isReturn || string.Equals(text, None, StringComparison.OrdinalIgnoreCase))
        {
            field.Clear();
            ReturnCode[..(isReturn ? ReturnCode.Length : 0)].CopyTo(field);
            return null;
        }

        if (Number.HexDigits(text.Trim()) is null)
        {
            return Raw.Write(text, field);
        }

        if (!Number.TryParse(text, out ulong address) || address > uint.MaxValue || address % 2 != 0)
        {
            return "it is not an even address of 32 bits";
        }

        field.Clear();
        V810Jump.WriteStub((uint)address, field);
        return null;
    }
}
