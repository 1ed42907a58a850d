using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Manifests;
using Cartwright.Roms;
using static Cartwright.Documents.FieldText;

namespace Cartwright.Documents;

/// <summary>Every key of the manifest as a page of documentation.</summary>
public static class ManifestPage
{
    /// <summary>The manifest shown at the top of the page.</summary>
    internal const string Example = """
        {
          "$schema": "cart.schema.json",
          "cart": {
            "name": "lantern-tide",               // stem of every output file
            "platform": "snes",
            "title": "LANTERN TIDE",
            "revision": 1
          },
          "programs": [
            { "file": "out/main.bin", "offset": "0" },                // an offset into the region
            { "file": "out/levels.hex", "address": "$018000" }        // or the console's own address
          ],
          "rom": { "size": "fit", "fill": "0xFF" },                   // fit: the smallest legal size
          "header": { "mapping": "lorom", "saveRam": "8KiB", "region": "north-america" },
          "board": {
            "use": "snes-single-8bit",            // a board of the catalogue, or a whole one described here
            "chips": { "U1": { "part": "SST39SF040" } }
          },
          "images": { "folder": "dist", "formats": [ "raw", "intel-hex" ] },
        }
        """;

    private const string Overrides = """
        Every key can be overridden without touching the file, so that one manifest serves a workbench and a build server. From weak to strong:

        1. the manifest;
        2. environment variables: `CARTWRIGHT__`, then the parts of the key joined by two underscores: `CARTWRIGHT__cart__revision=2`;
        3. `--set KEY=VALUE`, the parts of the key joined by colons, as often as needed: `--set cart:revision=2 --set rom:size=1MiB`.

        Items of lists are numbered from 0: `--set programs:0:file=out/other.bin`. An override changes one value: overriding item 0 of a list leaves
        item 1 as it is. `--out FOLDER` of `cartwright build` puts the output elsewhere, outside the manifest's folder too, whatever `images:folder` says.
        A finding about a value that came from an override names the variable or the option instead of a line of the file.
        """;

    private const string Reading = """
        A manifest is JSON in UTF-8; comments and trailing commas are allowed. Letter case of keys and words does not count for a build, but editors that
        use [the schema](cart.schema.json) expect them as written here. A value may be text or a plain JSON number: `"8"` and `8` are the same.
        A key that is not in these tables is an error, so that a mistyped one is not ignored in silence. Paths are taken from the manifest's folder.

        What a key can name stands on pages of its own: [platforms with their header fields](platforms.md), [boards](boards.md), [parts](parts.md).
        What can be wrong is told on [the page of findings](findings.md).

        In the tables below `#` stands for the number of a list's item and `*` for a name of your own choice.
        """;

    // What people write; the number beside it is read by the same code that reads a manifest.
    private static readonly ImmutableArray<string> Sizes = ["524288", "0x80000", "$80000", "512KiB", "512K", "4Mbit", "0.5MiB", "256Kbit"];

    private static readonly ImmutableArray<string> Addresses = ["$C08000", "0xC08000", "12615680", "03:4000", "$03:$4000"];

    /// <summary>Writes the page.</summary>
    public static string Markdown()
    {
        var page = new MarkdownPage();
        page.Heading(1, "The manifest");
        page.Paragraph("`cart.json` says what a cartridge is made of: the programs, the platform, the header, the board and the files to write. This page is generated from the table that reads it.");
        page.Heading(2, "Example");
        page.Paragraph($"```jsonc\n{Example}\n```");
        page.Heading(2, "How it is read");
        page.Paragraph(Reading);
        page.Heading(2, "Overrides");
        page.Paragraph(Overrides);
        WriteNotations(page);
        page.Heading(2, "Keys");
        WriteKeys(page, ManifestKeys.Rows.Where(static row => ManifestKeys.GroupOf(row) is null));
        foreach (var group in ManifestKeys.Groups)
        {
            page.Heading(3, group.Pattern);
            page.Paragraph(group.Meaning);
            WriteKeys(page, group.Keys);
        }

        return page.ToString();
    }

    /// <summary>A kind of value in words.</summary>
    /// <param name="kind">The kind.</param>
    internal static string Word(ManifestKeyKind kind) => kind switch
    {
        ManifestKeyKind.Text => "text",
        ManifestKeyKind.Path => "path",
        ManifestKeyKind.Size => "size",
        ManifestKeyKind.Number => "number",
        ManifestKeyKind.Fraction => "number with fraction",
        ManifestKeyKind.Address => "address",
        ManifestKeyKind.Byte => "byte",
        ManifestKeyKind.Truth => "true or false",
        _ => "word",
    };

    private static void WriteNotations(MarkdownPage page)
    {
        page.Heading(2, "Sizes, numbers and addresses");
        page.Paragraph("Sizes are written as people write them. The trade counts memory in bits as well: 8 Mbit are 1 MiB.");
        page.Table(["size", "bytes"], Sizes.Select(static text => ImmutableArray.Create(Code(text), Bytes(text))));
        page.Paragraph($"Units: {string.Join(", ", ByteSize.UnitNames.Select(Code))}. Without one, bytes are meant. Underscores may group the digits of a number: `0x8_0000`. A byte is a number from 0x00 to 0xFF.");
        page.Paragraph("An address is one of the console's own, with its bank apart or in one number; each platform's page says what its addresses look like.");
        page.Table(["address", "bank", "within it"], Addresses.Select(static text => AddressCells(text)));
    }

    private static string Bytes(string text) =>
        ByteSize.TryParse(text, out var bytes) ? bytes.ToString(CultureInfo.InvariantCulture) : throw new InvalidOperationException($"{text} is no size");

    private static ImmutableArray<string> AddressCells(string text) => ConsoleAddress.TryParse(text, out var address)
        ? [Code(text), address.Bank is { } bank ? Number.Hex(bank, 2) : "(in the number)", Number.Hex(address.Address, 4)]
        : throw new InvalidOperationException($"{text} is no address");

    private static void WriteKeys(MarkdownPage page, IEnumerable<ManifestKey> rows)
    {
        var keys = rows.ToList();
        if (keys.Count > 0)
        {
            page.Table(["key", "value", "default", "meaning"], keys.Select(static row => ImmutableArray.Create(
                Code(row.Pattern), Value(row), row.Required ? "(must be there)" : row.Default is null ? "" : Code(row.Default), row.Meaning)));
        }
    }

    private static string Value(ManifestKey row)
    {
        var words = string.Join(", ", row.Words.Select(Code));
        return words.Length == 0 ? Word(row.Kind) : row.Kind == ManifestKeyKind.Size ? $"{Word(row.Kind)} or {words}" : words;
    }
}
