using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Ordering;

namespace Cartwright.Boards;

/// <summary>Reads a board, from the catalogue or from a manifest: both are written in the same keys.</summary>
public static class BoardReader
{
    private static readonly ImmutableSortedDictionary<string, Lane> Lanes = ManifestWords.Words(
        ("word", Lane.Word), ("low", Lane.Low), ("high", Lane.High), ("d16-d23", Lane.Third), ("d24-d31", Lane.Fourth));

    private static readonly ImmutableSortedDictionary<string, ChipFill> Fills = ManifestWords.Words(
        ("erased", ChipFill.Erased), ("repeat", ChipFill.Repeat), ("top", ChipFill.Top));

    private static readonly ImmutableSortedDictionary<string, ByteOrder> Orders = ManifestWords.Words(
        ("big-endian", ByteOrder.BigEndian), ("little-endian", ByteOrder.LittleEndian));

    private static readonly ImmutableSortedDictionary<string, LineTie> Ties = ManifestWords.Words(
        ("low", LineTie.Low), ("high", LineTie.High), ("open", LineTie.Open));

    /// <summary>Reads a board.</summary>
    /// <param name="section">The section with its keys.</param>
    /// <param name="id">Its id.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when something is wrong.</returns>
    public static Board? Read(ManifestSection section, string id, FindingLog log)
    {
        var before = log.Count;
        var busWidth = Width(section, "busWidth", log);
        var sites = section["sites"].Sections.Select(site => ReadSite(site, busWidth, log)).OfType<Site>().ToImmutableArray();
        var board = new Board(
            id,
            section.Text("platform", log)?.Text,
            busWidth,
            section.Choice("byteOrder", Orders, log) ?? ByteOrder.BigEndian,
            section.Fraction("busVolts", log) ?? 5,
            sites)
        {
            Description = section.Text("description", log)?.Text ?? "",
            Source = section.Text("source", log)?.Text,
            Joins = JoinReader.Read(section["joins"], log),
            Expects = section["expects"].Sections.ToImmutableSortedDictionary(
                static field => field.Name,
                field => section["expects"].Texts(field.Name, log).Select(static value => value.Text).ToImmutableArray(),
                StringComparer.OrdinalIgnoreCase),
        };
        CheckBoard(board, section, log);
        return log.Count == before ? board : null;
    }

    private static Site? ReadSite(ManifestSection section, int busWidth, FindingLog log)
    {
        var name = section.Text("site", log, required: true);
        if (name is not null && FileNameRule.Problem(name.Text) is { } problem)
        {
            log.Add(ManifestFindings.UnsafeName, name.Place, $"`{name.Text}` cannot be part of a file name: {problem}.");
        }

        var width = Width(section, "width", log);
        var lines = new LineReader(section, log);
        var rest = section.Text("length", log) is not { } length || string.Equals(length.Text, "rest", StringComparison.OrdinalIgnoreCase);
        return name is null ? null : new Site(
            name.Text,
            section.Text("region", log)?.Text ?? ManifestReader.OnlyRegion,
            width,
            section.Choice("lane", Lanes, log) ?? Lane.Word,
            section.Size("start", log) ?? 0,
            rest ? null : section.Size("length", log),
            section.Choice("fill", Fills, log) ?? ChipFill.Repeat)
        {
            LaneCount = busWidth == 32 ? 4 : 2,
            Every = section.Size("every", log),
            Largest = section.Size("largest", log),
            DataLines = lines.DataLines(width),
            AddressLines = lines.AddressLines("addressLines"),
            Ties = lines.Ties(Ties),
            Latched = lines.AddressLines("latched"),
            Select = lines.Select(),
            AccessNs = section.Fraction("accessNs", log),
            OutputEnableNs = section.Fraction("outputEnableNs", log),
            RestAt = section.Size("restAt", log),
            Blocks = section.Number("blocks", log) is { } blocks ? (int)Math.Min(blocks, int.MaxValue) : null,
            BlockStep = section.Size("blockStep", log),
            Meaning = section.Text("meaning", log)?.Text,
        };
    }

    // A number of lines no int can hold is as wrong as the largest one.
    private static int Width(ManifestSection section, string key, FindingLog log) => (int)Math.Min(section.Number(key, log) ?? 8, int.MaxValue);

    private static void CheckBoard(Board board, ManifestSection section, FindingLog log)
    {
        void Contradiction(string message, string expected) =>
            log.Add(BoardFindings.Contradiction, section["sites"].Place, message, expected);

        if (board.BusWidth is not (8 or 16 or 32))
        {
            Contradiction($"A bus of {board.BusWidth} data lines.", "8, 16 or 32");
        }

        if (board.Sites.IsEmpty)
        {
            Contradiction("The board has no sites.", "at least one, in `sites`");
        }

        foreach (var site in board.Sites)
        {
            var busBytes = Math.Max(1, board.BusWidth / 8);
            if ((site.Start | (site.Length ?? 0) | (site.Every ?? 0)) % busBytes != 0)
            {
                Contradiction($"The slice of the site {site.Name} begins or ends inside a {board.BusWidth}-bit word.", busBytes == 2 ? "an even `start` and `length`" : $"`start` and `length` as multiples of {busBytes}");
            }

            if (site.Length == 0)
            {
                Contradiction($"The slice of the site {site.Name} is empty.", "a `length` of 1 byte or more, or `rest`");
            }

            CheckSpread(site, busBytes, Contradiction);
            CheckLines(site, Contradiction);
            if (site.Every is { } every && site.End > every)
            {
                Contradiction($"The slice of the site {site.Name} is not inside a block of {ByteSize.Words(every)}.", "a `length` that ends inside the block, or no `every`");
            }

            if (!Fits(site, board.BusWidth))
            {
                Contradiction($"The site {site.Name} has {site.Width} data lines on the lane `{Word(site.Lane)}` of a bus of {board.BusWidth}.",
                    "8 lines on one lane of a 16-bit or 32-bit bus, 16 lines on the whole word of a 16-bit one, or 8 lines on an 8-bit bus");
            }
        }

        foreach (var (first, second) in Rivals(board.Sites))
        {
            Contradiction($"The sites {first.Name} and {second.Name} both drive the lane `{Word(second.Lane)}` for the same bytes of the region `{second.Region}`.",
                "slices that do not overlap, or different lanes");
        }

        foreach (var (first, second) in Together(board.Sites))
        {
            Contradiction($"The sites {first.Name} and {second.Name} are both enabled from ${Math.Max(first.Select!.Start!.Value, second.Select!.Start!.Value):X} on, on the same data lines.",
                "ranges that do not overlap, or different lanes");
        }

        var twice = board.Sites.GroupBy(static site => site.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(static group => group.Count() > 1);
        if (twice is not null)
        {
            Contradiction($"There are two sites {twice.Key}.", "a name of its own for each site");
        }
    }

    private static bool Fits(Site site, int busWidth) => busWidth switch
    {
        16 => site is { Lane: Lane.Word, Width: 16 } or { Lane: Lane.Low or Lane.High, Width: 8 },
        32 => site is { Lane: not Lane.Word, Width: 8 },
        _ => site is { Lane: Lane.Word, Width: 8 },
    };

    private static void CheckSpread(Site site, int busBytes, Action<string, string> contradiction)
    {
        if (site.RestAt is { } at && (at is < 2 or > ByteSize.LargestMemory || !long.IsPow2(at)))
        {
            contradiction($"The rest of a ROM cannot be selected at {ByteSize.Describe(at)} of the site {site.Name}.", $"`restAt` as a power of two up to {ByteSize.Words(ByteSize.LargestMemory)}");
        }

        var lies = site is { Blocks: null, BlockStep: null }
            || (site is { Blocks: > 0 and var blocks, BlockStep: > 0 and var step } && step <= ByteSize.LargestMemory / blocks && step % busBytes == 0);
        if (!lies)
        {
            contradiction($"The site {site.Name} does not say how its blocks lie.",
                $"`blocks` and `blockStep`, both above 0, whole words of the bus, and all blocks together at most {ByteSize.Words(ByteSize.LargestMemory)}");
        }

        if (site is { RestAt: not null, Blocks: not null })
        {
            contradiction($"The site {site.Name} selects both blocks and a rest.", "either `restAt` or `blocks`");
        }
    }

    private static void CheckLines(Site site, Action<string, string> contradiction)
    {
        if (site.AddressLines.Length > LineOrder.MostLines || site.AddressLines.Distinct().Count() < site.AddressLines.Length)
        {
            contradiction($"A line of the chip meets two lines of the bus at the site {site.Name}.", "each line once in `addressLines`");
        }

        foreach (var line in site.Ties.Keys.Where(line => site.AddressLines.Contains(line) || site.Latched.Contains(line)))
        {
            contradiction(FormattableString.Invariant($"A{line} of the site {site.Name} is tied, and driven as well."), "a line in one of `addressLines`, `latched` and `ties`");
        }

        if (site.DataLines is { } data && data.Count != site.Width)
        {
            contradiction(FormattableString.Invariant($"The site {site.Name} names {data.Count} data lines and has {site.Width}."), "every data line of the chip once");
        }
    }

    // Pairs of chips that would answer at the same address on the same data lines.
    private static IEnumerable<(Site First, Site Second)> Rivals(ImmutableArray<Site> sites) => Neighbours(sites).Where(static pair => Overlap(pair.First, pair.Second));

    // Pairs that one access enables, whatever of the region they hold.
    private static IEnumerable<(Site First, Site Second)> Together(ImmutableArray<Site> sites) => Neighbours(sites).Where(static pair =>
        pair.First.Select is { Start: { } first, End: { } firstEnd } && pair.Second.Select is { Start: { } second, End: { } secondEnd } && first <= secondEnd && second <= firstEnd);

    private static IEnumerable<(Site First, Site Second)> Neighbours(ImmutableArray<Site> sites)
    {
        for (var i = 0; i < sites.Length; i++)
        {
            for (var j = i + 1; j < sites.Length; j++)
            {
                var (first, second) = (sites[i], sites[j]);
                if (string.Equals(first.Region, second.Region, StringComparison.OrdinalIgnoreCase)
                    && (first.Lane == second.Lane || first.Lane == Lane.Word || second.Lane == Lane.Word))
                {
                    yield return (first, second);
                }
            }
        }
    }

    // Slices of blocks come again and again, so that only another slice of such blocks can keep out of their way.
    private static bool Overlap(Site first, Site second) => first.Every == second.Every
        ? first.Start < second.End && second.Start < first.End
        : (second.Every is not null || first.Start < second.End) && (first.Every is not null || second.Start < first.End);

    /// <summary>The word for a lane.</summary>
    /// <param name="lane">The lane.</param>
    public static string Word(Lane lane) => ManifestWords.WordOf(Lanes, lane);

    /// <summary>The word for a way to fill a chip.</summary>
    /// <param name="fill">The way.</param>
    public static string Word(ChipFill fill) => ManifestWords.WordOf(Fills, fill);

    /// <summary>The word for a tie.</summary>
    /// <param name="tie">The tie.</param>
    public static string Word(LineTie tie) => ManifestWords.WordOf(Ties, tie);

    /// <summary>The word for a byte order.</summary>
    /// <param name="order">The order.</param>
    public static string Word(ByteOrder order) => ManifestWords.WordOf(Orders, order);
}
