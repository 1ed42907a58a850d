namespace Cartwright.Roms;

/// <summary>What a platform says of one region.</summary>
/// <param name="Name">The region's name: <c>rom</c>, <c>prg</c>, <c>chr</c>.</param>
/// <param name="Sizes">The sizes it can have.</param>
/// <param name="Meaning">What it holds, a few words.</param>
public sealed record RegionRule(string Name, SizeRule Sizes, string Meaning)
{
    /// <summary>Value of bytes no program covers, unless the manifest says another: the erased value of flash and EPROM.</summary>
    public byte Fill { get; init; } = 0xFF;

    /// <summary>False for a region a cart may do without, such as CHR on a board with CHR RAM.</summary>
    public bool Required { get; init; } = true;

    /// <summary>At which end the programs lie.</summary>
    public RegionAlign Align { get; init; } = RegionAlign.Start;
}
