using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Programs;
using Cartwright.Proofs;

namespace Cartwright;

/// <summary>What a cartridge should hold, out of the record of a build or a test image and the chip files beside it.</summary>
/// <param name="file">The record, as the user named it.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class ExpectedRecord(string file, FindingLog log)
{
    /// <summary>Whether a JSON text is a record, whatever its form.</summary>
    public static bool Is(JsonElement root) => root.ValueKind == JsonValueKind.Object && root.TryGetProperty("record", out _);

    /// <summary>Reads it.</summary>
    /// <param name="record">The record.</param>
    /// <returns>Null when it cannot be used.</returns>
    public ExpectedCart? Read(JsonElement record)
    {
        try
        {
            if (RecordSites.Number(record, "record") > BuildRecord.Form)
            {
                throw new FormatException("it is of a later form than this version of cartwright knows");
            }

            var board = RecordSites.Board(record, []);
            var chips = board is null ? [] : List(record, "chips");
            var told = chips.Select(chip => RecordSites.Site(chip, board!.BusWidth)).ToImmutableArray();
            board = board is null ? null : board with { Sites = [.. told.Select(site => Known(board, site))] };
            var sites = chips.Select((chip, i) => Site(record, board!, board!.Sites[i], chip)).OfType<ExpectedSite>().ToImmutableArray();
            if (log.HasErrors)
            {
                return null;
            }

            if (sites.IsEmpty)
            {
                log.Add(ProofFindings.NoBoard, new SourcePlace(file), $"{file} names no chips.");
                return null;
            }

            return new ExpectedCart(file, board, sites, board is null ? [] : [.. Regions(record, board, told, sites)]);
        }
        catch (FormatException fault)
        {
            log.Add(ProofFindings.BadRecord, new SourcePlace(file), $"{file} cannot be used: {fault.Message}.");
            return null;
        }
    }

    // The catalogue knows more of a site than a record tells.
    private static Site Known(Board board, Site site) =>
        BoardCatalog.Find(board.Id)?.Sites.FirstOrDefault(known => known.Name == site.Name && known.Region == site.Region && known.Lane == site.Lane && known.Width == site.Width && known.Start == site.Start) ?? site;

    private ExpectedSite? Site(JsonElement record, Board board, Site site, JsonElement chip)
    {
        var order = RecordSites.Text(chip, "wordOrder") is { } word && ManifestWords.WordOrders.TryGetValue(word, out var named) ? named : throw new FormatException("a word order is missing");
        var entries = List(record, "files").Where(entry => RecordSites.Text(entry, "kind") == "chip" && RecordSites.Text(entry, "site") == site.Name).ToList();
        var raw = entries.FirstOrDefault(static entry => RecordSites.Text(entry, "format") == ManifestWords.Word(ImageFormat.Raw));
        if (RecordSites.Text(raw, "file") is not { } name)
        {
            log.Add(ProofFindings.NoRawImage, new SourcePlace(file), $"{file} lists no raw image of {site.Name}.");
            return null;
        }

        var path = Path.Combine(Path.GetDirectoryName(file) ?? "", Path.GetFileName(name));
        if (ImageFile.Read(path, log) is not { } bytes)
        {
            return null;
        }

        if (FileDigest.Of(bytes).Sha256 != RecordSites.Text(raw, "sha256") || bytes.Length != RecordSites.Number(chip, "capacity") || bytes.Length % (site.Width / 8) != 0)
        {
            log.Add(ProofFindings.NotAsRecorded, new SourcePlace(path), $"{path} has SHA-256 {FileDigest.Of(bytes).Sha256}.", RecordSites.Text(raw, "sha256"));
            return null;
        }

        if (!site.AddressLines.IsEmpty && !SiteLines.Fit(site, bytes.Length))
        {
            throw new FormatException($"{site.Name} names address lines that its chip of {ByteSize.Describe(bytes.Length)} has not");
        }

        return new ExpectedSite(site, bytes, ExpectedBuild.Shape(site.Width, order, board.ByteOrder)) { File = path, Part = RecordSites.Text(chip, "part") is { } part ? PartCatalog.BuiltIn.Find(part) : null };
    }

    // A region is what its chips give together; where they leave a byte out, nothing is known of it.
    private static IEnumerable<ExpectedRegion> Regions(JsonElement record, Board board, ImmutableArray<Site> told, ImmutableArray<ExpectedSite> sites)
    {
        foreach (var held in sites.GroupBy(static site => site.Site.Region, StringComparer.OrdinalIgnoreCase))
        {
            var bytes = new byte[LengthOf(record, held.Key, told)];
            var merger = new ChipMerger(board);
            if (held.All(site => ChipMerger.ContentOf(site.Site, bytes) is > 0 && ChipMerger.Needs(site.Site, bytes) <= site.Bytes.Length))
            {
                foreach (var site in held)
                {
                    merger.PutBack(site.Site, site.Bytes, OrderOf(board, site), bytes);
                }

                yield return new ExpectedRegion(held.Key, bytes) { BankSize = BankSize(record) };
            }
        }
    }

    private static WordOrder OrderOf(Board board, ExpectedSite site) =>
        site.Shape == ExpectedBuild.Shape(site.Site.Width, WordOrder.Bus, board.ByteOrder) ? WordOrder.Bus : WordOrder.Programmer;

    // A test image's record lists no regions: theirs end where the last of their chips does. With slices of blocks that cannot be said.
    private static long LengthOf(JsonElement record, string region, ImmutableArray<Site> told)
    {
        var listed = List(record, "regions").FirstOrDefault(row => RecordSites.Text(row, "region") == region);
        var length = listed.ValueKind == JsonValueKind.Object ? RecordSites.Number(listed, "size")
            : told.Where(site => site.Region == region).Max(static site => site.Length is { } length ? site.Start + length : 0);
        return length <= ProgramInput.LargestFile ? length : throw new FormatException($"the region `{region}` has {ByteSize.Describe(length)}");
    }

    private static int BankSize(JsonElement record) =>
        record.TryGetProperty("testImage", out var image) && image.TryGetProperty("bankSize", out _) ? RecordSites.Number(image, "bankSize") : 0;

    private static ImmutableArray<JsonElement> List(JsonElement record, string name) =>
        record.TryGetProperty(name, out var list) && list.ValueKind == JsonValueKind.Array ? [.. list.EnumerateArray()] : [];
}
