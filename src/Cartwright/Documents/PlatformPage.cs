using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;
using static Cartwright.Documents.FieldText;

namespace Cartwright.Documents;

/// <summary>The page of a platform, made from its tables.</summary>
public static class PlatformPage
{
    /// <summary>Writes the page as Markdown that reads on a terminal as well.</summary>
    /// <param name="platform">The platform.</param>
    public static string Markdown(Platform platform) => Markdown(platform, depth: 0);

    /// <summary>Writes the page with its headings moved down, for a page of several platforms.</summary>
    internal static string Markdown(Platform platform, int depth)
    {
        var page = new MarkdownPage(depth);
        WriteFacts(page, platform);
        WriteOptions(page, platform);
        WriteRegions(page, platform);
        HeaderPart.Write(page, platform);
        page.Section("How it is recognised", platform.Facts.Recognition);
        page.Section("Save memory", platform.Facts.Saves);
        page.Section("What commonly goes wrong", platform.Facts.Traps);
        page.Section("Where sources disagree", platform.Facts.Disputes);
        WriteBoards(page, platform);
        page.Section("Findings of its own", [.. platform.Findings.Select(static rule => $"{rule.Code} ({FindingText.Word(rule.Severity)}): {rule.Title}")]);
        page.Section("Sources", platform.Facts.Sources);
        return page.ToString();
    }

    private static void WriteFacts(MarkdownPage page, Platform platform)
    {
        var facts = platform.Facts;
        page.Heading(1, facts.Name);
        page.List(
        [
            $"Platform: {Code(facts.Id)}{(facts.Aliases.IsEmpty ? "" : "; also written " + string.Join(", ", facts.Aliases.Select(Code)))}",
            string.Create(CultureInfo.InvariantCulture, $"Cartridge bus: {facts.BusWidth} data lines, {facts.BusVolts} V"),
            $"Byte order of the processor: {BoardReader.Word(facts.ByteOrder)}",
            .. VariantText.Lines("Addresses", PerLayout(platform), static layout => layout.Addresses.Forms),
        ]);
        page.Section("Memory map", facts.MemoryMap);
    }

    private static void WriteOptions(MarkdownPage page, Platform platform)
    {
        if (!platform.Options.IsEmpty)
        {
            page.Heading(2, "Options");
            page.Paragraph("Keys of `header` that are no bytes of their own; they choose the layout.");
        }

        foreach (var option in platform.Options)
        {
            page.Heading(3, option.Name);
            page.Paragraph(option.Meaning);
            page.List([option.Required ? "It must be stated." : $"When not stated: {Code(option.Default)}", $"Source: {option.Source}."]);
            WordList.Write(page, "Words", option.Values, numbers: false);
        }
    }

    private static void WriteRegions(MarkdownPage page, Platform platform)
    {
        page.Heading(2, "Regions");
        foreach (var region in platform.Layouts.SelectMany(static layout => layout.Regions.Select(rule => new Variant<RegionRule>(layout.Variant, rule))).GroupBy(static rule => rule.Value.Name))
        {
            var rules = region.ToImmutableArray();
            page.Heading(3, region.Key);
            page.List(
            [
                .. VariantText.Lines("Holds", rules, static rule => rule.Meaning),
                .. VariantText.Lines("Size", rules, static rule => rule.Sizes.Words),
                .. VariantText.Lines("`fit` chooses from", rules, static rule => Choices(rule.Sizes)),
                .. VariantText.Lines("Fill", rules, static rule => Number.Hex(rule.Fill, 2)),
                .. VariantText.Lines("May be missing", rules, static rule => rule.Required ? "no" : "yes"),
            ]);
        }
    }

    private static string Choices(SizeRule sizes) =>
        sizes.FitStep > 0 ? "multiples of " + ByteSize.Words(sizes.FitStep) : string.Join(", ", sizes.Customary.Select(ByteSize.Words));

    private static void WriteBoards(MarkdownPage page, Platform platform)
    {
        var boards = BoardCatalog.All.Where(board => string.Equals(board.Platform, platform.Facts.Id, StringComparison.OrdinalIgnoreCase)).ToList();
        if (boards.Count > 0)
        {
            page.Heading(2, "Boards of the catalogue");
            page.AlignedTable(["board", "description"], boards.Select(static board => ImmutableArray.Create(Code(board.Id), board.Description)));
        }
    }

    private static ImmutableArray<Variant<PlatformLayout>> PerLayout(Platform platform) =>
        [.. platform.Layouts.Select(static layout => new Variant<PlatformLayout>(layout.Variant, layout))];
}
