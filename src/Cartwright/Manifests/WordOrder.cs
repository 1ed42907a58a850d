namespace Cartwright.Manifests;

/// <summary>The order of the two bytes of each word in a file for a 16-bit chip.</summary>
public enum WordOrder
{
    /// <summary>Bytes in the order of the console's addresses.</summary>
    Bus,

    /// <summary>Little-endian words, as device programmers commonly read files for 16-bit chips: the first byte goes to D0-D7.</summary>
    Programmer,
}
