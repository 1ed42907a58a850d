namespace Cartwright.Headers;

/// <summary>One row of a header table. The same row writes the field from the manifest, reads it from an image, checks it, and documents it.</summary>
/// <param name="Name">The manifest key, in camel case.</param>
/// <param name="Offset">First byte, counted from the table's start.</param>
/// <param name="Length">Bytes.</param>
/// <param name="Codec">How bytes and text become each other.</param>
/// <param name="Meaning">What the field says, one sentence.</param>
/// <param name="Source">Where the fact comes from.</param>
public sealed record HeaderField(string Name, int Offset, int Length, FieldCodec Codec, string Meaning, string Source)
{
    /// <summary>The value when nothing else gives one; null when there is none, and then the program's bytes stay.</summary>
    public string? Default { get; init; }

    /// <summary>The default where it follows from fields before this one; a null result for <see cref="Default"/>. A stated value may well differ.</summary>
    public Func<HeaderContext, string?>? DefaultFrom { get; init; }

    /// <summary>Works the value out from what is known of the cart; null, or a null result, when it cannot be.</summary>
    public Func<HeaderContext, string?>? WorkOut { get; init; }

    /// <summary>True when only the image's own bytes decide what is right, so that a wrong value of an existing image may be put right unasked: a size code, a fixed mark. Nothing an author may mean.</summary>
    public bool Mended { get; init; }

    /// <summary>A known wrong value of existing images, and what belongs there; null for none.</summary>
    public FieldRepair? Repair { get; init; }

    /// <summary>The key of the manifest's <c>cart</c> that gives the value; null for other fields.</summary>
    public CartKey? FromCart { get; init; }

    /// <summary>Whether the field is there at all, given the fields before it; null for always.</summary>
    public Func<HeaderContext, bool>? When { get; init; }

    /// <summary>True when the cart cannot be built without a value.</summary>
    public bool Required { get; init; }
}
