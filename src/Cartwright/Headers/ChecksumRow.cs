using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Headers;

/// <summary>One checksum of a header: where it is stored and how it is computed.</summary>
/// <param name="Name">The name, which is also the key that states or keeps it.</param>
/// <param name="Offset">First byte, counted from the table's start.</param>
/// <param name="Length">Bytes, 1 to 8.</param>
/// <param name="Order">Which byte comes first.</param>
/// <param name="Compute">The pure function that gives the value.</param>
/// <param name="Rule">The function in words.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record ChecksumRow(string Name, int Offset, int Length, ByteOrder Order, ChecksumFunction Compute, string Rule, string Source)
{
    /// <summary>True when the console itself refuses a wrong value.</summary>
    public bool Enforced { get; init; }

    /// <summary>True when neither the console nor loaders look at it: a wrong value is worth a note.</summary>
    public bool Unread { get; init; }

    /// <summary>The checksums this one covers, which must be stored before it is computed.</summary>
    public ImmutableArray<string> Covers { get; init; } = [];

    /// <summary>Other functions programs are known to store the value of. A value that one of them explains may be meant.</summary>
    public ImmutableArray<OtherChecksum> Others { get; init; } = [];

    /// <summary>The region it is computed over, where it stands in a container; null where it stands in the region itself.</summary>
    public string? Over { get; init; }

    /// <summary>How the number lies in its bytes.</summary>
    public BytesPlacement Placement => new(Length, Order);

    /// <summary>The other rule, in words, that gives a stored value; null when none does.</summary>
    /// <param name="region">The bytes of the region.</param>
    /// <param name="stored">The value the image holds.</param>
    public string? Explain(ReadOnlySpan<byte> region, ulong stored)
    {
        foreach (var other in Others)
        {
            if (other.Compute(region) == stored)
            {
                return other.Rule;
            }
        }

        return null;
    }

    /// <summary>Writes a value as the field holds it: <c>0xA89B</c>.</summary>
    /// <param name="value">The value.</param>
    public string Format(ulong value) => "0x" + value.ToString("X" + (Length * 2).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
