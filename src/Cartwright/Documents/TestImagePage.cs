using System.Collections.Immutable;
using Cartwright.TestImages;
using static Cartwright.Documents.FieldText;

namespace Cartwright.Documents;

/// <summary>The test images as a page of documentation.</summary>
public static class TestImagePage
{
    private const string Head = """
        An image for the chips of a board that is made to be read back. A program shows only the faults its own bytes happen to show;
        a test image is made so that every line shows. This page is generated from the table that `cartwright pattern` prints.

        ```sh
        cartwright pattern signature --board md-double-8bit --size 512KiB --out cards   # every chip of a board, each with an image of its own
        cartwright pattern ruler --part SST39SF040 --out cards                          # one chip, by its part
        cartwright pattern signature --size 256KiB --width 16 --word-order programmer   # one chip, by size and data lines
        cartwright pattern fill game.sfc --board snes-single-8bit --out cards           # a release that stays diagnosable
        ```

        Any power of two from 2 KiB to 64 MiB, chips of 8 and 16 data lines, both word orders. For a single 16-bit chip `bus` is the high byte first
        in the file, `programmer` the low byte first.
        """;

    private const string Files = """
        - `KIND.U1.bin` and so on: what is written into each chip, and, to the byte, what a read of that chip by itself must give.
        - `KIND.cartridge.REGION.bin`: what a read of the whole cartridge must give, in the console's order. A chip by itself has none.
        - `KIND.record.json`: board, chips, seeds and digests, for `cartwright prove`.

        The same line gives the same bytes every time. The kinds with chance bits take the number of the site on the board as their seed, so that
        two exchanged chips are told apart; `--seed` adds a number of your own.
        """;

    private const string Bench = """
        1. Write `signature` first, not the game, into chips that were written on a programmer that is known to be good. Writing through the
           same board that reads hides exchanged lines.
        2. Read the cartridge through its edge, and compare with `cartwright prove`. Then, for the eye, `ruler` or `banks`.
        3. On chips that are erased with ultraviolet light one image an erase is practical: take `signature`. Never look at the lamp, and erase only
           in a closed eraser.
        4. When the wiring is right, write the game, or the game through `fill`.
        """;

    private const string Memory = """
        A march test finds faults of cells; it says nothing of keeping. For that, copy the save first, twice, and compare the copies. Then write
        `memory` into the save memory through a reader, read it at once, switch off for ten seconds, an hour and a night, read each time, and compare:

        ```sh
        cartwright pattern memory --size 32KiB --out cards
        cartwright pattern retention cards/memory.U1.bin at-once.bin next-day.bin
        ```

        Do the same with `memory-inverse`, and write the save back in the end. A lithium cell must never be charged, shorted or heated: its data sheet says how it may be soldered.
        """;

    /// <summary>Writes the page.</summary>
    public static string Markdown()
    {
        var page = new MarkdownPage();
        page.Heading(1, "Test images");
        page.Paragraph(Head);
        page.Heading(2, "Kinds");
        page.Table(["kind", "made for each", "holds", "one read of it tells", "it cannot tell"], TestImageKinds.All.Select(Cells));
        page.Heading(2, "Files");
        page.Paragraph(Files);
        page.Heading(2, "At the bench");
        page.Paragraph(Bench);
        page.Heading(2, "Save memory");
        page.Paragraph(Memory);
        return page.ToString();
    }

    private static ImmutableArray<string> Cells(TestImageKind kind) =>
        [Code(kind.Name), kind.OfChip is not null ? "chip" : kind.OfRegion is not null ? "region" : "image", kind.Holds, kind.Tells, kind.CannotTell];
}
