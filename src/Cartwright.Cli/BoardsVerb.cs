using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Chips;
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
        var verb = new Verb("boards", "Lists the boards of the catalogue, or shows one with its sites.", "cartwright boards", "cartwright boards md", "cartwright boards md-double-8bit", "cartwright boards cart.json") { words, json };
        verb.SetAction(parsed => Run(parsed.GetValue(words) ?? [], parsed.GetValue(json), output, errors));
        return verb;
    }

    private static int Run(string[] words, bool json, TextWriter output, TextWriter errors)
    {
        if (words is [var file] && (File.Exists(file) || File.Exists(Path.Combine(file, "cart.json"))))
        {
            return Own(ManifestInput.Path(file), json, output, errors);
        }

        var found = words is [var id] && BoardCatalog.Find(id) is { } exact
            ? [exact]
            : BoardCatalog.All.Where(board => words.All(word => Matches(board, word))).ToList();
        if (found.Count == 0)
        {
            errors.WriteLine(NotFound.Line("board", string.Join(' ', words), NearestName.Question(words[0], BoardCatalog.Ids), "boards"));
            return ExitCode.Refused;
        }

        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, found));
        }
        else if (found.Count == 1)
        {
            WriteBoard(output, found[0]);
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
        ImageInput.WriteFindings(errors, log.ToSorted());
        if (board is null)
        {
            return ExitCode.Refused;
        }

        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, [board]));
            return ExitCode.Done;
        }

        WriteBoard(output, board);
        foreach (var site in board.Sites.Where(LineTable.IsNeeded))
        {
            if (manifest!.Board.Chips.GetValueOrDefault(site.Name)?.Part is { } name && PartCatalog.BuiltIn.Find(name.Text) is { } part && SiteLines.Fit(site, (int)part.CapacityBytes))
            {
                output.WriteLine($"Writing {part.Name} at {site.Name} in place");
                Columns.Write(output, "  ", InPlaceTable.Rows(site, part));
            }
        }

        return ExitCode.Done;
    }

    private static bool Matches(Board board, string word) =>
        board.Id.Contains(word, StringComparison.OrdinalIgnoreCase) || board.Description.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static void WriteBoard(TextWriter output, Board board)
    {
        output.WriteLine(board.Id);
        output.WriteLine(board.Description);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Bus: {board.BusWidth} bits, {board.BusVolts} V{(board.BusWidth == 16 ? ", " + BoardReader.Word(board.ByteOrder) : "")}"));
        foreach (var (field, values) in board.Expects)
        {
            output.WriteLine($"Wired for: {field} {string.Join(" or ", values)}");
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

        foreach (var site in board.Sites.Where(static site => LineTable.IsNeeded(site)))
        {
            output.WriteLine($"Lines of {site.Name}");
            Columns.Write(output, "  ", LineTable.Rows(site));
        }

        if (board.Source is { } source)
        {
            output.WriteLine("Source: " + source);
        }
    }

    private static void WriteJson(Utf8JsonWriter json, List<Board> boards)
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
                LineTable.WriteJson(json, site);
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
