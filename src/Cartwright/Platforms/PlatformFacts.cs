using System.Collections.Immutable;

namespace Cartwright.Platforms;

/// <summary>What a platform's page says besides its tables.</summary>
/// <param name="Id">The id the manifest uses: <c>snes</c>.</param>
/// <param name="Name">The name in full: Super Nintendo Entertainment System / Super Famicom.</param>
public sealed record PlatformFacts(string Id, string Name)
{
    /// <summary>Other spellings the manifest may use.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>Data lines of the cartridge bus: 8 or 16.</summary>
    public required int BusWidth { get; init; }

    /// <summary>Which byte of a number comes first for the console's processor.</summary>
    public required Headers.ByteOrder ByteOrder { get; init; }

    /// <summary>Supply of the cartridge bus in volts.</summary>
    public required double BusVolts { get; init; }

    /// <summary>The memory map, a line a range: "$8000-$FFFF PRG".</summary>
    public required ImmutableArray<string> MemoryMap { get; init; }

    /// <summary>Kinds of save memory, a line each.</summary>
    public ImmutableArray<string> Saves { get; init; } = [];

    /// <summary>What commonly goes wrong, a sentence each.</summary>
    public ImmutableArray<string> Traps { get; init; } = [];

    /// <summary>By what an image of it is known without a name, a sentence each, the surest first.</summary>
    public ImmutableArray<string> Recognition { get; init; } = [];

    /// <summary>Points on which sources disagree, and the reading that is built here.</summary>
    public ImmutableArray<string> Disputes { get; init; } = [];

    /// <summary>Titles of the sources.</summary>
    public required ImmutableArray<string> Sources { get; init; }
}
