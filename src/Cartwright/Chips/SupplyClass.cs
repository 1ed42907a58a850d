namespace Cartwright.Chips;

/// <summary>The supply a part was made for; follows from the range of its supply voltage.</summary>
public enum SupplyClass
{
    /// <summary>At least 4.5 V.</summary>
    FiveVolt,

    /// <summary>At most 3.6 V.</summary>
    ThreeVolt,

    /// <summary>At most 2.0 V.</summary>
    OnePointEightVolt,

    /// <summary>A range that spans 3 V and 5 V.</summary>
    Mixed,
}
