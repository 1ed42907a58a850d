using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Programs;
using Cartwright.Proofs;
using Cartwright.TestImages;

namespace Cartwright;

/// <summary>What a cartridge should hold, out of the file a user names: a record, a manifest, a ROM with its board, or the file of one chip.</summary>
internal static class ExpectedFile
{
    private const string ManifestName = "cart.json";

    /// <summary>Reads it.</summary>
    /// <param name="task">What is to be proved.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when it cannot be used.</returns>
    public static ExpectedCart? Read(ProofTask task, FindingLog log)
    {
        if (Directory.Exists(task.Expected))
        {
            return Read(task with { Expected = Path.Combine(task.Expected, ManifestName) }, log);
        }

        if (ImageFile.Read(task.Expected, log) is not { } bytes)
        {
            return null;
        }

        return task.Expected.EndsWith(".json", StringComparison.OrdinalIgnoreCase) ? ReadJson(task, bytes, log)
            : !IsBinary(task.Expected, bytes, log) ? null
            : task.Board is null ? Chip(task, bytes)
            : Rom(task, task.Board, bytes, log);
    }

    /// <summary>Whether a file holds bytes and no text of hexadecimal records; a finding where it does not.</summary>
    public static bool IsBinary(string file, byte[] bytes, FindingLog log)
    {
        var format = ProgramFormats.ByContent(bytes);
        if (bytes.Length == 0)
        {
            log.Add(ProofFindings.Empty, new SourcePlace(file), $"{file} is empty.");
        }
        else if (format is ProgramFormat.IntelHex or ProgramFormat.SRecord)
        {
            log.Add(ProofFindings.IsText, new SourcePlace(file), $"{file} is a text in the format {(format == ProgramFormat.IntelHex ? "Intel HEX" : "S-record")}.");
            return false;
        }

        return bytes.Length > 0;
    }

    private static ExpectedCart? ReadJson(ProofTask task, byte[] bytes, FindingLog log)
    {
        try
        {
            using var document = JsonDocument.Parse(bytes);
            if (ExpectedRecord.Is(document.RootElement))
            {
                return new ExpectedRecord(task.Expected, log).Read(document.RootElement);
            }
        }
        catch (JsonException)
        {
            // A manifest may have comments, and is told by line and column what is wrong with it.
        }

        return ExpectedBuild.OfManifest(task, log);
    }

    private static ExpectedCart? Rom(ProofTask task, string board, byte[] bytes, FindingLog log)
    {
        if (BoardCatalog.Find(board) is not { } found)
        {
            log.Add(BoardFindings.Unknown, new SourcePlace("--board"), $"There is no board `{board}`.", "an id that `cartwright boards` lists", NearestName.Question(board, BoardCatalog.Ids));
            return null;
        }

        var platform = task.Platform is null ? null : PlatformCatalog.BuiltIn.Find(task.Platform);
        return new ImageOpener(PlatformCatalog.BuiltIn).Open(task.Expected, bytes, platform, log) is { } image
            ? ExpectedBuild.OfRom(task.Expected, image.Cart.Rom, image.Cart.Layout.Addresses.BankOf, found, task.Part, task.WordOrder ?? WordOrder.Bus, log)
            : null;
    }

    private static ExpectedCart Chip(ProofTask task, byte[] bytes)
    {
        var part = task.Part is null ? null : PartCatalog.BuiltIn.Find(task.Part);
        var width = task.Width ?? (part?.DataBus == PartDataBus.Sixteen ? 16 : 8);
        var board = SingleChip.Of(width);
        var site = board.Sites[0] with { Name = task.Site ?? board.Sites[0].Name };
        return new ExpectedCart(task.Expected, null, [new ExpectedSite(site, bytes, ExpectedBuild.Shape(width, task.WordOrder ?? WordOrder.Bus, board.ByteOrder)) { Part = part }], ImmutableArray<ExpectedRegion>.Empty);
    }
}
