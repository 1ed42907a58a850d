namespace Cartwright.Chips;

/// <summary>Whether a part's inputs stand 5 V.</summary>
public enum FiveVoltTolerance
{
    /// <summary>Nothing was found that says so: treat it as <see cref="No"/>.</summary>
    Unknown,

    /// <summary>They do not.</summary>
    No,

    /// <summary>They do; on a part with a mixed supply only while its own supply is 5 V.</summary>
    Yes,
}
