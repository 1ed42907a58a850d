using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Production;

/// <summary>Works out the bytes of each field of a unit.</summary>
/// <param name="cart">The cart's name, which seeds depend on.</param>
/// <param name="fields">The fields.</param>
public sealed class UnitValues(string cart, ImmutableArray<UnitField> fields)
{
    /// <summary>The bytes of a unit's fields, in the order of the fields.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="log">Receives values that do not fit.</param>
    public ImmutableArray<byte[]> Of(RunUnit unit, FindingLog log) => [.. fields.Select(field => Of(field, unit, log))];

    /// <summary>A field's value as a label shows it.</summary>
    /// <param name="field">The field.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="unit">The unit.</param>
    public static string Text(UnitField field, byte[] bytes, RunUnit unit) => field switch
    {
        { Kind: UnitFieldKind.Seed } => Convert.ToHexString(bytes),
        { Kind: UnitFieldKind.Serial, IsBinary: true } => unit.Serial.ToString(CultureInfo.InvariantCulture),
        _ => Encoding.ASCII.GetString(bytes).TrimEnd((char)field.Pad),
    };

    private byte[] Of(UnitField field, RunUnit unit, FindingLog log)
    {
        var bytes = field.Kind switch
        {
            UnitFieldKind.Seed => Seed(field, unit.Serial),
            UnitFieldKind.Text => FieldBytes.Text(unit.Texts.GetValueOrDefault(field.Name, ""), field.Width, field.Pad),
            _ => field.IsBinary ? FieldBytes.Number(unit.Serial, field.Width, field.LowByteFirst) : SerialText.Write(unit.Serial, field) is { } digits ? Encoding.ASCII.GetBytes(digits) : null,
        };
        if (bytes is null)
        {
            log.Add(RunFindings.DoesNotFit, field.Place, string.Create(CultureInfo.InvariantCulture,
                $"The unit {unit.Serial} has no value of {field.Width} bytes for `{field.Name}`{(field.Kind == UnitFieldKind.Text ? $": `{unit.Texts.GetValueOrDefault(field.Name)}`" : "")}."),
                field.Kind == UnitFieldKind.Text ? "printable ASCII letters, no more than the field has bytes" : null);
        }

        return bytes ?? new byte[field.Width];
    }

    // As many bytes as are asked for, each block from its own number.
    private byte[] Seed(UnitField field, long serial)
    {
        var seed = new byte[field.Width];
        for (var at = 0; at < seed.Length; at += SHA256.HashSizeInBytes)
        {
            var block = SHA256.HashData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{cart}/{field.Name}/{serial}/{at}")));
            block.AsSpan(0, Math.Min(block.Length, seed.Length - at)).CopyTo(seed.AsSpan(at));
        }

        return seed;
    }
}
