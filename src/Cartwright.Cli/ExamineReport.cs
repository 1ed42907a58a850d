using System.Globalization;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Cli;

/// <summary>Tells what an existing image is.</summary>
internal static class ExamineReport
{
    public static string Line(ExaminedImage examined)
    {
        if (examined.Image is not { } image)
        {
            return $"{examined.File}: {examined.Findings[^1].Message}";
        }

        var checksums = image.Cart.Headers.SelectMany(static header => header.Checksums).ToList();
        var sums = checksums.Count == 0 ? "no checksum" : checksums.TrueForAll(static entry => entry.Right) ? "checksums right" : "checksums wrong";
        var crc = System.IO.Hashing.Crc32.HashToUInt32(image.Bytes.Span);
        return string.Create(CultureInfo.InvariantCulture,
            $"{examined.File}: {image.Found.Platform.Facts.Id}, {image.Cart.Layout.Variant}, {ByteSize.Words(image.Bytes.Length)}, {ManifestWords.Word(image.Found.Claim.Order)}, {sums}, {examined.Errors} errors, {examined.Warnings} warnings, CRC-32 {crc:X8}");
    }

    public static void Write(TextWriter output, OpenedImage image)
    {
        output.WriteLine($"{image.File}: {image.Found.Platform.Facts.Name}, {image.Cart.Layout.Variant}");
        Columns.Write(output, "  ", [.. image.Ranked.Prepend(image.Found).Distinct().Select(static row => new[] { row.Platform.Facts.Id, CertaintyWord.Of(row.Claim.Certainty), row.Claim.Reason })]);
        WriteFile(output, image);
        WriteHeader(output, image);
        foreach (var region in image.Cart.Rom.Regions)
        {
            WriteRegion(output, image, region);
        }
    }

    private static void WriteFile(TextWriter output, OpenedImage image)
    {
        var digest = FileDigest.Of(image.Bytes.Span);
        output.WriteLine("File");
        Columns.Write(output, "  ",
        [
            ["size", ByteSize.Describe(image.Bytes.Length)],
            ["order", ManifestWords.Word(image.Found.Claim.Order)],
            .. image.Parts.Select(static part => new[] { part.Region ?? "container", $"{ByteSize.Words(part.Length)} from 0x{part.Start:X6}" }),
            ["CRC-32", digest.Crc32Text],
            ["SHA-256", digest.Sha256],
            ["sum", digest.Sum16Text],
        ]);
    }

    private static void WriteHeader(TextWriter output, OpenedImage image)
    {
        foreach (var header in image.Cart.Headers.AddRange(image.Vectors))
        {
            output.WriteLine(char.ToUpperInvariant(header.Table.Title[0]) + header.Table.Title[1..]);
            Columns.Write(output, "  ",
            [
                .. header.Entries.Select(static entry => new[] { Number.Hex(entry.Offset, 6), entry.Field.Name, Short(entry.Text), Short(Convert.ToHexString(entry.Raw.AsSpan())) }),
                .. header.Checksums.Select(static entry => new[] { Number.Hex(entry.Offset, 6), entry.Row.Name, entry.Row.Format(entry.Stored), entry.Right ? "right" : $"computed {entry.Row.Format(entry.Computed)}" }),
            ]);
        }
    }

    private static void WriteRegion(TextWriter output, OpenedImage image, RegionImage region)
    {
        var measure = ContentMeasure.Of(region.Bytes.Span);
        var bankSize = image.Cart.Layout.Addresses.BankOf(region.Name);
        var banks = BankUse.Of(region.Bytes.Span, bankSize);
        output.WriteLine($"Region {region.Name}: {ByteSize.Describe(region.Length)}, content {ByteSize.Describe(measure.Content)}"
            + (measure.Period < region.Length ? $", repeats after {ByteSize.Describe(measure.Period)}" : "")
            + (measure.TrailingFill is { } fill ? $", then {Number.Hex(fill, 2)}" : ""));
        output.WriteLine(bankSize > 0 ? $"Banks of {ByteSize.Words(bankSize)}" : "Sixteenths");
        Columns.Write(output, "  ", [.. banks.Select(static bank => new[] { Number.Hex(bank.Number, 2), Number.Hex(bank.Offset, 6), Percent(bank) })]);
    }

    private static string Percent(BankUse bank) =>
        bank.Used > 0 && 100L * bank.Used < bank.Length ? " < 1 %" : string.Create(CultureInfo.InvariantCulture, $"{100L * bank.Used / bank.Length,3} %");

    private static string Short(string text) => text.Length <= 48 ? text : text[..45] + "...";
}
