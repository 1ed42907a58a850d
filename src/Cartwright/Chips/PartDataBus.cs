namespace Cartwright.Chips;

/// <summary>How many data lines a part presents.</summary>
public enum PartDataBus
{
    /// <summary>8 lines.</summary>
    Eight,

    /// <summary>16 lines, and no way to use only 8.</summary>
    Sixteen,

    /// <summary>8 or 16 lines, chosen by a pin such as BYTE#.</summary>
    Selectable,

    /// <summary>One bit at a time (Microwire or I2C).</summary>
    Serial,
}
