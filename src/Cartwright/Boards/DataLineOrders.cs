using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.Boards;

/// <summary>Orders of a chip's data lines that have a name in the trade.</summary>
public static class DataLineOrders
{
    /// <summary>The names and the orders, from D0 of the bus on.</summary>
    public static ImmutableArray<(string Name, LineOrder Order, string Words)> All { get; } =
    [
        ("straight", LineOrder.Straight(8), "every line meets its own number"),
        ("straight", LineOrder.Straight(16), "every line meets its own number"),
        ("reversed", LineOrder.Reversed(8), "the chip's D0 meets the bus's highest line"),
        ("reversed", LineOrder.Reversed(16), "the chip's D0 meets the bus's highest line"),
        ("nibbles-exchanged", new LineOrder(4, 5, 6, 7, 0, 1, 2, 3), "the two halves of the byte change places"),
        ("bytes-exchanged", new LineOrder(8, 9, 10, 11, 12, 13, 14, 15, 0, 1, 2, 3, 4, 5, 6, 7), "the two bytes of the word change places"),
        ("bytes-reversed", new LineOrder(7, 6, 5, 4, 3, 2, 1, 0, 15, 14, 13, 12, 11, 10, 9, 8), "each byte is reversed on its own"),
    ];

    /// <summary>The names, each once.</summary>
    public static ImmutableArray<string> Names { get; } = [.. All.Select(static row => row.Name).Distinct()];

    /// <summary>The order of a name on a bus of so many lines; null when there is none.</summary>
    /// <param name="name">The name, letter case ignored.</param>
    /// <param name="lines">8 or 16.</param>
    public static LineOrder? Find(string name, int lines) =>
        All.FirstOrDefault(row => string.Equals(row.Name, name, StringComparison.OrdinalIgnoreCase) && row.Order.Count == lines).Order;

    /// <summary>The first order of a name, of any number of lines; null when there is none.</summary>
    /// <param name="name">The name, letter case ignored.</param>
    public static LineOrder? Find(string name) => All.FirstOrDefault(row => string.Equals(row.Name, name, StringComparison.OrdinalIgnoreCase)).Order;

    /// <summary>The name of an order; null when it has none.</summary>
    /// <param name="order">The order.</param>
    public static string? NameOf(LineOrder order) => All.FirstOrDefault(row => row.Order.Equals(order)).Name;
}
