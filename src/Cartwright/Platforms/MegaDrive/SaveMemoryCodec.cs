using Cartwright.Headers;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The block that declares save memory, in words where it is in order.</summary>
internal sealed class SaveMemoryCodec : WordedTextCodec
{
    private const string None = "none";

    /// <summary>A range that does not keep to its lane is put onto it; which bytes the console reaches stays the same.</summary>
    public static FieldRepair Repair { get; } = new("addresses beside the lane it names", static (held, _) =>
        SaveMemory.FromBlock(held) is { InSpace: true } memory && memory.OnLane != memory ? memory.OnLane.ToString() : null, OnlyNamed: false);

    /// <inheritdoc/>
    public override string Expected =>
        "`none`; or size, `battery` or `volatile`, and lane, such as `8KiB battery odd` or `64KiB battery word at $200000`; or `eeprom`; or `128KiB flash at $3D0000`; or `hex` and twelve bytes";

    /// <inheritdoc/>
    protected override string? Words(ReadOnlySpan<byte> field) =>
        field.ContainsAnyExcept((byte)' ') ? SaveMemory.FromBlock(field)?.ToString() : None;

    /// <inheritdoc/>
    protected override string? WriteWords(string text, Span<byte> field)
    {
        if (string.Equals(text.Trim(), None, StringComparison.OrdinalIgnoreCase))
        {
            field.Fill((byte)' ');
            return null;
        }

        if (SaveMemoryWords.Read(text, out var memory) is { } problem)
        {
            return problem;
        }

        memory!.WriteTo(field);
        return null;
    }
}
