using System.Globalization;

namespace Cartwright.Platforms.Commodore;

/// <summary>Checks of the lines by which a C64 cartridge says how it is to be seen.</summary>
internal static class C64LineChecks
{
    public static void Check(CartView cart, CommodoreMapping mapping, StartChecks checks)
    {
        var region = cart.Rom[CommodoreMapping.Region]!;
        var lines = new CrtLines(checks.Entry("exrom").Raw[0], checks.Entry("game").Raw[0]);
        var usual = mapping.LinesFor(region.Length);
        if (lines == CrtLines.None)
        {
            checks.Add(CommodoreFindings.NoLines, "exrom", $"`exrom` and `game` are {lines}.", usual.ToString());
        }
        else if (!mapping.HasOwnLines && lines != usual)
        {
            checks.Add(CommodoreFindings.OtherLines, "exrom", $"`exrom` and `game` are {lines}, and the mapping {mapping.Name} has {usual} at reset.", usual.ToString());
        }

        if (mapping.Name == "16k" && region.CoveringSegment(CommodoreMapping.WindowSize, CommodoreMapping.WindowSize) is null)
        {
            checks.Add(CommodoreFindings.EmptyHalf, "mapping", string.Create(CultureInfo.InvariantCulture, $"No program lies at 0x{CommodoreMapping.WindowSize:X4} or above it, which is seen at $A000."));
        }
    }
}
