using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Boards;
using Cartwright.Manifests;
using static Cartwright.Documents.FieldText;

namespace Cartwright.Documents;

/// <summary>The boards of the catalogue as a page of documentation.</summary>
public static class BoardPage
{
    private const string Head = """
        The boards of the catalogue: generic ones, described by their wiring. This page is generated from the catalogue;
        `cartwright boards NAME` prints one of them.

        A board is named in the manifest with `"board": { "use": "…" }`. A board that is not here is described in the manifest itself, in the same keys:
        see `board` in [the page of the manifest](manifest.md).

        - **Lane** is the byte of a wider bus that a chip drives: `low` is D0-D7, `high` is D8-D15 (on a 32-bit bus `d16-d23` and `d24-d31` follow), `word` the whole bus.
        - **From** is where the chip's slice of its region begins, **holds** how long it may be.
        - **Larger chip** says how a chip larger than its slice is filled: `repeat` repeats the slice, which is right whatever the upper address pins
          are tied to; `erased` leaves 0xFF behind it (pins tied low), `top` puts it at the end (pins tied high).
        - **Largest** is the largest chip whose address pins the site can drive.

        A board described in a manifest can also say how its lines run, where they do not run straight:

        - `addressLines` lists the chip's line for each address line of the bus, `dataLines` the chip's line for each data line of its lane, or names the
          order. The chip file is ordered to suit, so that the bus reads what the ROM holds: `chip[P(a)] = Q(rom[a])`, where P moves bit k of the address to
          the k-th line listed and Q does the same with the bits of a word. `cartwright arrange back` is the exact way back.
        - `ties` says what a line of the chip meets that the bus does not drive: `low`, `high`, or `open`. `fill` says it for the lines that are not listed:
          `erased` is low, `top` high, and `repeat` is right for either. An open line needs the slice twice, and is warned of: tie it.
        - `joins` lays several regions into one, for a chip that serves them all; a site names the join as its region.
        - `latched` lists the lines a bank latch drives, `select` says what enables the chip, `accessNs` how long the console waits for data, `outputEnableNs` how long after output enable.

        `cartwright boards cart.json` prints the line table of such a board both ways, and, where a part is named, each line's pin and the addresses and data that write it
        in place; `cartwright boards NAME --chip U1=PART` does so for a board of the catalogue.

        Compare the description with the board in your hand before a chip is soldered in: boards of one kind differ in details.
        """;

    /// <summary>Writes the page.</summary>
    public static string Markdown()
    {
        var page = new MarkdownPage();
        var boards = BoardCatalog.All;
        page.Heading(1, "Boards");
        page.Paragraph(Head);
        page.Table(["board", "platform", "description"], boards.Select(static board => ImmutableArray.Create($"[{board.Id}](#{board.Id})", board.Platform ?? "", board.Description)));
        foreach (var board in boards)
        {
            WriteBoard(page, board);
        }

        return page.ToString();
    }

    private static void WriteBoard(MarkdownPage page, Board board)
    {
        page.Heading(2, board.Id);
        page.Paragraph(board.Description);
        page.List(
        [
            $"Platform: {(board.Platform is null ? "any" : Code(board.Platform))}",
            string.Create(CultureInfo.InvariantCulture, $"Bus: {board.BusWidth} data lines, {board.BusVolts} V{(board.BusWidth > 8 ? ", " + BoardReader.Word(board.ByteOrder) : "")}"),
            .. board.Expects.Select(static pair => $"Wired for: {Code(pair.Key)} {string.Join(" or ", pair.Value.Select(Code))}"),
            .. board.Source is null ? [] : ImmutableArray.Create("Source: " + board.Source),
        ]);
        page.Table(["site", "region", "data lines", "lane", "from", "holds", "larger chip", "largest", "meaning"], board.Sites.Select(Cells));
        page.List([.. board.Sites.SelectMany(static site => SiteWiring.Clauses(site).Select(clause => $"{site.Name}: {clause}."))]);
    }

    private static ImmutableArray<string> Cells(Site site) =>
    [
        site.Name,
        site.Region,
        site.Width.ToString(CultureInfo.InvariantCulture),
        BoardReader.Word(site.Lane),
        Number.Hex(site.Start, 6),
        site.Length is { } length ? $"up to {ByteSize.Words(length)}{(site.Every is { } every ? " of every " + ByteSize.Words(every) : "")}" : "the rest",
        BoardReader.Word(site.Fill),
        site.Largest is { } largest ? ByteSize.Words(largest) : "",
        site.Meaning ?? "",
    ];
}
