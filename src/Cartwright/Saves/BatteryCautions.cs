using System.Collections.Immutable;

namespace Cartwright.Saves;

/// <summary>What somebody must know before a cell is changed.</summary>
/// <remarks>Copying first: common practice. The paths from the cell: "Pressing the button (SW1) drops SRAM voltage too low", an issue of a
/// multicart board. Handling of lithium cells: from memory of the makers' usual warnings; the cell's data sheet counts.</remarks>
public static class BatteryCautions
{
    /// <summary>The cautions, in the order of the work.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "Copy the save first: read it twice, and go on only when both reads agree (`cartwright save keep`). Without the cell it is gone.",
        "Mark which side of the old cell is plus, and compare with the board before the new one goes in: a cell the wrong way round damages board and cell.",
        "Never charge a lithium cell, short it, open it or heat it: it can leak, burst or burn. No cell stays in while a bench supply feeds the same point.",
        "Leave the diode, or the supervisor, between cell and supply in place and the right way round: it keeps the console from charging the cell. Look at every path that leads away from the cell.",
        "Never solder on the cell itself: the heat destroys it or makes it burst. Use a holder, or a cell whose tabs the maker has welded on.",
        "Keep coin cells away from children: a swallowed one burns within hours and needs a hospital at once.",
        "Tape both sides of the old cell and take it to a collection point for batteries, not to the household waste.",
        "Where the data sheets of cell, memory and supervisor say otherwise, they are right.",
    ];
}
