namespace Cartwright.Manifests;

/// <summary>What a field that differs from unit to unit holds.</summary>
public enum UnitFieldKind
{
    /// <summary>The unit's serial number.</summary>
    Serial,

    /// <summary>Bytes that look random and follow from the cart's name, the field's name and the serial number.</summary>
    Seed,

    /// <summary>A text of the unit, out of the table of units.</summary>
    Text,
}
