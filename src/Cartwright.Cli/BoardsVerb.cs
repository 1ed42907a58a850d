using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright boards</c></summary>
internal static class BoardsVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var words = new Argument<string[]>("words") { Description = "A board to show in full, a manifest whose board is shown, or words to search for.", Arity = ArgumentArity.ZeroOrMore };
        var json = Verb.JsonOption();
        var chips = BoardInput.ChipOption();
        var verb = new Verb("boards", "Lists the boards of the catalogue, or shows one with its sites.", "cartwright boards", "cartwright boards md", "cartwright boards md-double-8bit", "cartwright boards md-double-8bit --chip U1=SST39SF040", "cartwright boards cart.json") { words, json, chips };
        verb.SetAction(parsed => Run(parsed.GetValue(words) ?? [], parsed.GetValue(chips), parsed.GetValue(json), output, errors));
        return verb;
    }

    private static int Run(string[] words, string[]? chips, bool json, TextWriter output, TextWriter errors)
    {
        if (words is [var file] && (File.Exists(file) || File.Exists(Path.Combine(file, "cart.json"))))
        {
            return Own(ManifestInput.Path(file), json, output, errors);
        }

        var log = new FindingLog();
        var parts = BoardInput.Parts(chips, log).ToDictionary(static row => row.Key, static row => new ChipSettings(row.Key, row.Value.Place, row.Value, null, null));
        var found = words is [var id] && BoardCatalog.Find(id) is { } exact
            ? [exact]
            : BoardCatalog.All.Where(board => words.All(word => Matches(board, word))).ToList();
        if (found.Count == 0)
        {
            errors.WriteLine(NotFound.Line("board", string.Join(' ', words), NearestName.Question(words[0], BoardCatalog.Ids), "boards"));
            return ExitCode.Refused;
        }

        var fitted = FittedChips.Of(found is [var only] ? only : null, parts.Values, log);
        ImageInput.WriteFindings(errors, log.ToSorted());
        if (log.HasErrors)
        {
            return ExitCode.Refused;
        }

        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, found, fitted));
        }
        else if (found is [var board])
        {
            WriteBoard(output, board, fitted);
        }
        else
        {
            Columns.Write(output, "", [.. found.Select(static board => new[] { board.Id, board.Description })]);
        }

        return ExitCode.Done;
    }

    // A board described in a manifest, with the chips fitted there.
    private static int Own(string file, bool json, TextWriter output, TextWriter errors)
    {
        var log = new FindingLog();
        var manifest = ImageInput.Read(file, log) is { } text ? ManifestReader.Read(file, text, ManifestInput.Overrides([]), log) : null;
        var board = manifest is null ? null : BoardChoice.Find(manifest.Board, manifest.Cart.Name.Text, log);
        var fitted = FittedChips.Of(board, manifest?.Board.Chips.Values ?? [], log);
        ImageInput.WriteFindings(errors, log.ToSorted());
        if (board is null || log.HasErrors)
        {
            return ExitCode.Refused;
        }

        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, [board], fitted));
            return ExitCode.Done;
        }

        WriteBoard(output, board, fitted);
        return ExitCode.Done;
    }

    private static bool Matches(Board board, string word) =>
        board.Id.Contains(word, StringComparison.OrdinalIgnoreCase) || board.Description.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static void WriteBoard(TextWriter output, Board board, FittedChips fitted)
    {
        output.WriteLine(board.Id);
        output.WriteLine(board.Description);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Bus: {board.BusWidth} bits, {board.BusVolts} V{(board.BusWidth > 8 ? ", " + BoardReader.Word(board.ByteOrder) : "")}"));
        foreach (var (field, values) in board.Expects)
        {
            output.WriteLine($"Wired for: {field} {string.Join(" or ", values)}");
        }

        foreach (var join in board.Joins)
        {
            output.WriteLine($"Join {join.Name}: {string.Join(", ", join.Parts.Select(static part => $"{part.Region} at {Number.Hex(part.At, 6)}"))}");
        }

        output.WriteLine("Sites");
        Columns.Write(output, "  ", [.. board.Sites.Select(static site => new[]
        {
            site.Name, $"{site.Width} bits", BoardReader.Word(site.Lane), site.Region,
            $"from 0x{site.Start:X6}", site.Length is { } length ? $"up to {ByteSize.Words(length)}{(site.Every is { } every ? " of every " + ByteSize.Words(every) : "")}" : "the rest", $"larger chip: {BoardReader.Word(site.Fill)}", site.Meaning ?? "",
        })]);
        foreach (var (site, clause) in board.Sites.SelectMany(static site => SiteWiring.Clauses(site).Select(clause => (site, clause))))
        {
            output.WriteLine($"  {site.Name}: {clause}");
        }

        foreach (var site in board.Sites)
        {
            WriteLines(output, site, fitted);
        }

        if (board.Source is { } source)
        {
            output.WriteLine("Source: " + source);
        }
    }

    private static void WriteLines(TextWriter output, Site site, FittedChips fitted)
    {
        var (part, lines) = (fitted.PartAt(site), fitted.LinesOf(site));
        if (lines.IsNeeded)
        {
            output.WriteLine($"Lines of {site.Name}{(part is null ? "" : $", {part.Name}")}");
            Columns.Write(output, "  ", lines.Rows);
        }

        foreach (var caution in lines.Cautions)
        {
            output.WriteLine($"  Caution: {caution}.");
        }

        if (part is not null && !SiteLines.IsStraight(site) && SiteLines.Fit(site, (int)part.CapacityBytes))
        {
            output.WriteLine($"Writing {part.Name} at {site.Name} in place");
            Columns.Write(output, "  ", InPlaceTable.Rows(site, part));
        }
    }

    private static void WriteJson(Utf8JsonWriter json, List<Board> boards, FittedChips fitted)
    {
        json.WriteStartArray("boards");
        foreach (var board in boards)
        {
            json.WriteStartObject();
            json.WriteString("id", board.Id);
            json.WriteString("platform", board.Platform);
            json.WriteString("description", board.Description);
            json.WriteNumber("busWidth", board.BusWidth);
            json.WriteString("byteOrder", BoardReader.Word(board.ByteOrder));
            json.WriteNumber("busVolts", board.BusVolts);
            json.WriteStartArray("sites");
            foreach (var site in board.Sites)
            {
                json.WriteStartObject();
                json.WriteString("site", site.Name);
                json.WriteString("region", site.Region);
                json.WriteNumber("width", site.Width);
                json.WriteString("lane", BoardReader.Word(site.Lane));
                json.WriteNumber("start", site.Start);
                json.WriteString("fill", BoardReader.Word(site.Fill));
                json.WriteString("meaning", site.Meaning);
                fitted.LinesOf(site).WriteJson(json);
                if (SiteWiring.Clauses(site) is { IsEmpty: false } clauses)
                {
                    json.WriteStartArray("wiring");
                    foreach (var clause in clauses)
                    {
                        json.WriteStringValue(clause);
                    }

                    json.WriteEndArray();
                }

                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
