namespace Cartwright.Manifests;

/// <summary>What guards a serial number against a slip of the pen.</summary>
public enum CheckDigit
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>One digit by the Luhn formula, for alphabets of an even number of digits.</summary>
    Luhn,

    /// <summary>Two decimal digits that make the number 1 modulo 97.</summary>
    Mod97,
}
