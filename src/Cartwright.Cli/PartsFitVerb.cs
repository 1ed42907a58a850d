using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Programs;

namespace Cartwright.Cli;

/// <summary><c>cartwright parts fit</c></summary>
internal static class PartsFitVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string?>("file") { Description = "The image to be carried; or say its size on one chip with --bytes.", Arity = ArgumentArity.ZeroOrOne };
        var board = BoardInput.BoardOption();
        var bytes = new Option<string?>("--bytes") { Description = "Bytes one chip must hold, in place of an image.", HelpName = "size" };
        var site = new Option<string?>("--site") { Description = "The site, where the board has several.", HelpName = "name" };
        var socket = new Option<string?>("--socket") { Description = "A part and package the site is made for, as M27C4001/DIP32: tells pins that have moved.", HelpName = "part/package" };
        var only = new Option<string?>("--only") { Description = "Words the parts must match, as `cartwright parts` takes them.", HelpName = "words" };
        var platform = ImageInput.PlatformOption();
        var json = Verb.JsonOption();
        var verb = new Verb(
            "fit",
            "Lists the parts that could carry an image on a board, and what each of them takes.",
            "cartwright parts fit game.sfc --board snes-single-8bit --only \"DIP32 5V\"",
            "cartwright parts fit --bytes 512KiB --board md-double-8bit --site U1",
            "cartwright parts fit --bytes 512KiB --board snes-single-8bit --socket M27C4001/DIP32")
        {
            file, board, bytes, site, socket, only, platform, json,
        };
        bytes.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => !ByteSize.TryParse(token.Value, out var size) || size is <= 0 or > ProgramInput.LargestFile))
            {
                result.AddError($"--bytes takes a size of up to 256 MiB such as 512KiB, not `{token.Value}`.");
            }
        });
        verb.Validators.Add(result =>
        {
            if (result.GetValue(file) is null == result.GetValue(bytes) is null)
            {
                result.AddError("name an image, or say --bytes; one of them.");
            }
        });
        verb.SetAction(parsed =>
        {
            PinOut? made = null;
            if (!BoardInput.TryFind(parsed.GetRequiredValue(board), errors, out var found)
                || !ImageInput.TryFind(parsed.GetValue(platform), errors, out var named)
                || (parsed.GetValue(socket) is { } words && !TryFindSocket(words, errors, out made)))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var name = parsed.GetValue(file);
            var chips = name is null ? Sized(found, parsed.GetValue(bytes)!)
                : ImageInput.Open(name, named, log) is { } image ? Cut(found, image.Cart.Rom, name, log)
                : [];
            ImageInput.WriteFindings(errors, log.ToSorted());
            return log.HasErrors ? ExitCode.Refused
                : Tell(found, chips, parsed.GetValue(site), made, parsed.GetValue(only) ?? "", parsed.GetValue(json), output, errors);
        });
        return verb;
    }

    private static ImmutableArray<(Site Site, long Needed)> Sized(Board board, string bytes)
    {
        _ = ByteSize.TryParse(bytes, out var needed);
        return [.. board.Sites.Select(site => (site, needed))];
    }

    private static ImmutableArray<(Site Site, long Needed)> Cut(Board board, Roms.Rom rom, string name, FindingLog log)
    {
        var unsaid = new FindingLog();
        var chips = new ChipCutter(board, ImmutableSortedDictionary<string, ManifestValue>.Empty, WordOrder.Bus).Cut(rom, name, unsaid);
        log.AddAll(unsaid.ToSorted().Where(static finding => finding.Severity == FindingSeverity.Error));

        return [.. chips.Select(static chip => (chip.Site, chip.ContentLength))];
    }

    private static bool TryFindSocket(string words, TextWriter errors, out PinOut? pinOut)
    {
        var slash = words.LastIndexOf('/');
        var part = PartCatalog.BuiltIn.Find(slash < 0 ? words : words[..slash]);
        pinOut = part is null ? null : slash < 0 ? PinOutCatalog.BuiltIn.Of(part).FirstOrDefault() : PinOutCatalog.BuiltIn.Find(part, words[(slash + 1)..]);
        if (pinOut is null)
        {
            errors.WriteLine(NotFound.Line("pin-out", words, "Write PART/PACKAGE, as M27C4001/DIP32; `cartwright parts PART` shows its pin-outs.", "parts"));
        }

        return pinOut is not null;
    }

    private static int Tell(Board board, ImmutableArray<(Site Site, long Needed)> chips, string? only, PinOut? socket, string words, bool json, TextWriter output, TextWriter errors)
    {
        var wanted = chips.Where(chip => only is null || string.Equals(chip.Site.Name, only, StringComparison.OrdinalIgnoreCase)).ToImmutableArray();
        if (wanted.IsEmpty)
        {
            errors.WriteLine(NotFound.Line("site", only ?? "", $"The board {board.Id} has {string.Join(", ", board.Sites.Select(static site => site.Name))}.", "boards"));
            return ExitCode.Refused;
        }

        var choice = PartCatalog.BuiltIn.Search(words);
        var fits = wanted.Select(chip => (chip.Site, chip.Needed, Fits: new PartFitter(board, chip.Site, socket).Among(choice, chip.Needed))).ToImmutableArray();
        if (json)
        {
            WriteJson(output, fits);
        }
        else
        {
            WriteText(output, fits);
        }

        return fits.Any(static fit => fit.Fits.IsEmpty) ? ExitCode.Found : ExitCode.Done;
    }

    private static void WriteText(TextWriter output, ImmutableArray<(Site Site, long Needed, ImmutableArray<PartFit> Fits)> sites)
    {
        foreach (var (site, needed, fits) in sites)
        {
            output.WriteLine($"{site.Name} holds {ByteSize.Describe(needed)} on {site.Width} data lines");
            if (fits.IsEmpty)
            {
                output.WriteLine("  No part of the catalogue would do.");
            }

            Columns.Write(output, "  ", [.. fits.Select(static fit => new[]
            {
                fit.Part.Name, ByteSize.Words(fit.Part.CapacityBytes), PartWords.Kinds.Print(fit.Part.Kind), fit.Part.Supply.Text + " V", fit.Part.Packages,
                PartWords.Statuses.Print(fit.Part.Evidence.Status), fit.Needs.IsEmpty ? "fits as it is" : "takes " + string.Join("; ", fit.Needs),
            })]);
        }
    }

    private static void WriteJson(TextWriter output, ImmutableArray<(Site Site, long Needed, ImmutableArray<PartFit> Fits)> sites) => Json.Write(output, json =>
    {
        json.WriteStartArray("sites");
        foreach (var (site, needed, fits) in sites)
        {
            json.WriteStartObject();
            json.WriteString("site", site.Name);
            json.WriteNumber("needed", needed);
            json.WriteNumber("width", site.Width);
            json.WriteStartArray("parts");
            foreach (var fit in fits)
            {
                json.WriteStartObject();
                json.WriteString("part", fit.Part.Name);
                json.WriteNumber("capacity", fit.Part.CapacityBytes);
                json.WriteString("status", PartWords.Statuses.Print(fit.Part.Evidence.Status));
                Json.WriteTexts(json, "needs", fit.Needs);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
