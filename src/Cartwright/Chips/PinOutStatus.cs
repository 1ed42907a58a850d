namespace Cartwright.Chips;

/// <summary>What a pin-out rests on.</summary>
public enum PinOutStatus
{
    /// <summary>The pin list was seen in the data sheet that the source names.</summary>
    Seen,

    /// <summary>It was seen in a symbol library or a pin table of a third party.</summary>
    Library,

    /// <summary>It was worked out from a seen pin-out, changed as the source says.</summary>
    Derived,

    /// <summary>Nothing was seen: check the data sheet.</summary>
    FromMemory,
}
