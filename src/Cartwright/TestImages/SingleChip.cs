using Cartwright.Boards;
using Cartwright.Headers;

namespace Cartwright.TestImages;

/// <summary>One chip by itself, as a board with one site whose lines run straight.</summary>
public static class SingleChip
{
    /// <summary>Name of the only region.</summary>
    public const string Region = "rom";

    private const double Volts = 5;
    private const string Id = "chip";

    /// <summary>Whether a board is one chip by itself.</summary>
    /// <param name="board">The board.</param>
    public static bool Is(Board board) => board.Id == Id;

    /// <summary>Makes the board.</summary>
    /// <param name="width">Data lines of the chip: 8 or 16.</param>
    public static Board Of(int width) =>
        new(Id, null, width, ByteOrder.BigEndian, Volts, [new Site("U1", Region, width, Lane.Word, 0, null, ChipFill.Erased)]) { Description = "One chip by itself." };
}
