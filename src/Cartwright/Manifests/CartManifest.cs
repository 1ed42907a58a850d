using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>A whole <c>cart.json</c>, every key read with its type.</summary>
/// <param name="File">The manifest's name as it is shown in findings.</param>
/// <param name="Cart">The game.</param>
/// <param name="Programs">The program files in the manifest's order.</param>
/// <param name="Regions">Settings by region name, letter case ignored.</param>
/// <param name="Header">Header fields.</param>
/// <param name="Board">Board and chips.</param>
/// <param name="Images">Outputs.</param>
public sealed record CartManifest(
    string File,
    CartIdentity Cart,
    ImmutableArray<ProgramEntry> Programs,
    ImmutableSortedDictionary<string, RegionSettings> Regions,
    HeaderSettings Header,
    BoardSettings Board,
    ImageSettings Images)
{
    /// <summary>What differs from unit to unit of a production run.</summary>
    public RunSettings Run { get; init; } = new([], null, null);

    /// <summary>Tables that must hold the values written over them.</summary>
    public ImmutableArray<ConflictTable> ConflictTables { get; init; } = [];

    /// <summary>Several games in one image; null for a cart of one.</summary>
    public SlotSettings? Slots { get; init; }

    /// <summary>Where a key stands, or the nearest key around it, for findings about values nobody stated.</summary>
    public Func<string, SourcePlace> Place { get; init; } = key => new SourcePlace(File, Key: key);
}
