using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Chips;

/// <summary>The parts Cartwright knows.</summary>
/// <remarks>
/// A name finds a part when it is the name of its row or one of the orderable names the row stands for; letter case, hyphens and blanks do
/// not count. When that fails, the name is taken for an order code and only what stands before its first hyphen counts. A row that also
/// mentions a sister of another capacity is not found by the sister's name. An orderable name that two rows claim finds neither.
/// </remarks>
public sealed class PartCatalog
{
    private static readonly Lazy<PartCatalog> Embedded = new(static () => Load(ReadResource("chips/parts.csv")));

    private readonly Dictionary<string, Part> _byName;

    /// <summary>A catalogue of these parts.</summary>
    /// <param name="parts">Parts with unique names.</param>
    /// <exception cref="InvalidDataException">Two parts share a name.</exception>
    public PartCatalog(ImmutableArray<Part> parts)
    {
        All = parts;
        _byName = new Dictionary<string, Part>(parts.Length * 2, StringComparer.Ordinal);
        foreach (var part in parts)
        {
            if (!_byName.TryAdd(PartName.Plain(part.Name), part))
                throw new InvalidDataException($"two parts are called {part.Name}");
        }

        AddAliases();
    }

    /// <summary>The catalogue that comes with the library, read on first use.</summary>
    public static PartCatalog BuiltIn => Embedded.Value;

    /// <summary>All parts in the order of the table.</summary>
    public ImmutableArray<Part> All { get; }

    /// <summary>The part of that name, orderable name or order code; null when the catalogue has none.</summary>
    /// <param name="name">What the user wrote.</param>
    public Part? Find(string name) =>
        _byName.GetValueOrDefault(PartName.Plain(name)) ?? _byName.GetValueOrDefault(PartName.Plain(PartName.Stem(name)));

    /// <summary>The parts that every word matches, in the order of the table.</summary>
    /// <param name="words">Words between blanks: pieces of a name, maker, kind or package; or whole sizes (<c>512KiB</c>, <c>4Mbit</c>),
    /// supplies (<c>5V</c>, <c>3V</c>, <c>mixed</c>) and widths (<c>8-bit</c>, <c>16-bit</c>, <c>serial</c>).</param>
    public ImmutableArray<Part> Search(string words)
    {
        var wanted = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. All.Where(part => Array.TrueForAll(wanted, word => PartSearch.Matches(part, word)))];
    }

    /// <summary>Orderable names nearest to one the catalogue does not have, nearest first; empty when none is near.</summary>
    /// <param name="name">What the user wrote.</param>
    public ImmutableArray<string> Nearest(string name) =>
        NearestName.Among(PartName.Stem(name), All.SelectMany(static part => part.Aliases.IsEmpty ? [part.Name] : part.Aliases));

    /// <summary>Parts that can carry a program of that size: those that run on the bus's supply first, then by capacity, then by name.</summary>
    /// <param name="bytes">Bytes the chip must hold.</param>
    /// <param name="width">Data lines of the site: 8 or 16.</param>
    /// <param name="busVolts">Supply of the bus, in volts; most cartridge slots have 5 V.</param>
    public ImmutableArray<Part> CouldHold(long bytes, int width, double busVolts = 5) =>
    [
        .. All
            .Where(part => part.IsRom && part.Supports(width) && part.CapacityBytes >= bytes)
            .OrderByDescending(part => part.Supply.Covers(busVolts))
            .ThenBy(static part => part.CapacityBytes)
            .ThenBy(static part => part.Name, StringComparer.Ordinal),
    ];

    /// <summary>Reads a catalogue from the text of a parts table.</summary>
    /// <exception cref="InvalidDataException">The table is malformed.</exception>
    internal static PartCatalog Load(ReadOnlySpan<byte> csv) => new([.. CsvTable.Parse("parts.csv", csv).Rows.Select(PartReader.Read)]);

    /// <summary>The bytes of a file that comes inside the library.</summary>
    internal static byte[] ReadResource(string name)
    {
        using var stream = typeof(PartCatalog).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidDataException($"the library lacks its resource {name}");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private void AddAliases()
    {
        var claims = new Dictionary<string, Part?>(All.Length * 2, StringComparer.Ordinal);
        foreach (var part in All)
        {
            foreach (var alias in part.Aliases)
            {
                var plain = PartName.Plain(alias);
                claims[plain] = !claims.TryGetValue(plain, out var other) || ReferenceEquals(other, part) ? part : null;
            }
        }

        foreach (var (alias, part) in claims)
        {
            if (part is not null)
                _byName.TryAdd(alias, part);
        }
    }
}
