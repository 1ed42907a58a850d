namespace Cartwright.Headers;

/// <summary>How a number lies in the bytes of a field.</summary>
public abstract class FieldPlacement
{
    /// <summary>Number of bits, 1 to 64.</summary>
    public abstract int Bits { get; }

    /// <summary>Largest number the bits can hold.</summary>
    public ulong Largest => Bits == 64 ? ulong.MaxValue : (1UL << Bits) - 1;

    /// <summary>Reads the number.</summary>
    /// <param name="field">The field's bytes.</param>
    public abstract ulong Read(ReadOnlySpan<byte> field);

    /// <summary>Writes the number and touches no other bit.</summary>
    /// <param name="field">The field's bytes.</param>
    /// <param name="value">The number, at most <see cref="Largest"/>.</param>
    public abstract void Write(Span<byte> field, ulong value);
}
