namespace Cartwright.Chips;

/// <summary>Which side of a package a pin is on.</summary>
/// <remarks>From memory: rows of DIP, SO and TSOP packages are halves; a PLCC has pin 1 in the middle of a side, and the 32-pin one is
/// longer than wide, with 7 and 9 pins a side.</remarks>
internal static class PackageSides
{
    /// <summary>Number of the side: 0 and 1 on packages of two rows, 0 to 3 round a PLCC.</summary>
    public static int Of(PinOut pinOut, int pin)
    {
        if (!pinOut.Package.StartsWith("PLCC", StringComparison.Ordinal))
        {
            return pin > pinOut.PinCount / 2 ? 1 : 0;
        }

        var first = pinOut.PinCount == 32 ? 7 : pinOut.PinCount / 4;
        var half = pinOut.PinCount / 2;
        var turned = (pin - 1 + (first / 2)) % pinOut.PinCount;
        return (turned >= half ? 2 : 0) + (turned % half >= first ? 1 : 0);
    }
}
