using System.Collections.Immutable;
using Cartwright.Roms;

namespace Cartwright.Headers;

/// <summary>Turns the bytes of a header field into text and text into the bytes; reading what was written gives an equal meaning back.</summary>
public abstract class FieldCodec
{
    /// <summary>The words the field can be; empty when it is free text, a number or a size.</summary>
    public virtual ImmutableArray<NamedValue> Names => [];

    /// <summary>What may be written besides the words, for tools that check a manifest before it is built.</summary>
    public virtual ValueForm Form => ValueForm.Free;

    /// <summary>What may be written, for messages and documents.</summary>
    public abstract string Expected { get; }

    /// <summary>Reads the field; never fails: what has no better form is given raw.</summary>
    /// <param name="field">The field's bytes.</param>
    public abstract string Read(ReadOnlySpan<byte> field);

    /// <summary>Writes the field.</summary>
    /// <param name="text">The value as the manifest has it.</param>
    /// <param name="field">The field's bytes; only bits of <see cref="Mask"/> are touched.</param>
    /// <returns>Null when written; otherwise what is wrong with the text, as a clause.</returns>
    public abstract string? Write(string text, Span<byte> field);

    /// <summary>Whether the text gives the bytes themselves and not their meaning: a deliberate way past what would be right.</summary>
    /// <param name="text">The value as the manifest has it.</param>
    public virtual bool IsRaw(string text) => false;

    /// <summary>Marks the bits the field owns; every bit unless the codec says otherwise.</summary>
    /// <param name="field">As many bytes as the field has, all zero.</param>
    public virtual void Mask(Span<byte> field) => field.Fill(0xFF);

    /// <summary>How many of the field's bytes its value takes: all of them, except in texts that end themselves, behind which the program may go on at once.</summary>
    /// <param name="field">The field's bytes.</param>
    public virtual int Reach(ReadOnlySpan<byte> field) => field.Length;

    /// <summary>Whether the bytes say nothing: all zero, all the region's fill value, or blank in the codec's own way.</summary>
    /// <param name="field">The field's bytes.</param>
    /// <param name="fill">The region's fill value.</param>
    public virtual bool IsBlank(ReadOnlySpan<byte> field, byte fill) => Blank.Is(field, fill);
}
