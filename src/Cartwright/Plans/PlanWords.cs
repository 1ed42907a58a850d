using Cartwright.Chips;

namespace Cartwright.Plans;

/// <summary>The words for what a plan does.</summary>
internal static class PlanWords
{
    public static WordTable<WriteAction> Actions { get; } = new(
        ("keep", "keep", WriteAction.Keep),
        ("program", "program only", WriteAction.Program),
        ("erase", "erase and program", WriteAction.Erase),
        ("rewrite", "rewrite", WriteAction.Rewrite));

    public static WordTable<WriteMethod> Methods { get; } = new(
        ("sectors", "erased sector by sector", WriteMethod.Sectors),
        ("pages", "rewritten page by page, without an erase of its own", WriteMethod.Pages),
        ("in place", "overwritten without an erase", WriteMethod.InPlace),
        ("whole chip", "erased as a whole", WriteMethod.WholeChip),
        ("ultraviolet", "erased as a whole, with ultraviolet light", WriteMethod.Ultraviolet),
        ("once", "never erased", WriteMethod.Once));
}
