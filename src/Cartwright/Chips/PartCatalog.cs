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

    private readonly Func<int, Part> _read;
    private readonly Part?[] _parts;
    private readonly Dictionary<string, int> _byName;

    /// <summary>A catalogue of these parts.</summary>
    /// <param name="parts">Parts with unique names.</param>
    /// <exception cref="InvalidDataException">Two parts share a name.</exception>
    public PartCatalog(ImmutableArray<Part> parts)
        : this([.. parts.Select(static part => (ImmutableArray<string>)[part.Name, .. part.Aliases])], index => parts[index])
    {
    }

    // Rows are read when they are asked for: a build asks for one or two of hundreds.
    private PartCatalog(ImmutableArray<ImmutableArray<string>> names, Func<int, Part> read)
    {
        _read = read;
        _parts = new Part?[names.Length];
        _byName = new Dictionary<string, int>(names.Length * 2, StringComparer.Ordinal);
        for (var index = 0; index < names.Length; index++)
        {
            if (!_byName.TryAdd(PartName.Plain(names[index][0]), index))
                throw new InvalidDataException($"two parts are called {names[index][0]}");
        }

        AddAliases(names);
    }

    /// <summary>The catalogue that comes with the library, read on first use.</summary>
    public static PartCatalog BuiltIn => Embedded.Value;

    /// <summary>All parts in the order of the table.</summary>
    public ImmutableArray<Part> All => [.. Enumerable.Range(0, _parts.Length).Select(At)];

    /// <summary>The part of that name, orderable name or order code; null when the catalogue has none.</summary>
    /// <param name="name">What the user wrote.</param>
    public Part? Find(string name) =>
        _byName.TryGetValue(PartName.Plain(name), out var index) || _byName.TryGetValue(PartName.Plain(PartName.Stem(name)), out index) ? At(index) : null;

    /// <summary>The parts that every word matches, in the order of the table.</summary>
    /// <param name="words">Words between blanks: pieces of a name, maker, kind or package; or whole sizes (<c>512KiB</c>, <c>4Mbit</c>, and
    /// <c>512KiB+</c> for that and more), supplies (<c>5V</c>, <c>3V</c>, <c>mixed</c>, or a voltage the part must stand: <c>3.3V</c>), access times
    /// at most (<c>90ns</c>), packages with their pins (<c>DIP32</c>) and widths (<c>8-bit</c>, <c>16-bit</c>, <c>serial</c>).</param>
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
    internal static PartCatalog Load(byte[] csv)
    {
        var rows = CsvTable.Parse("parts.csv", csv).Rows;
        return new PartCatalog([.. rows.Select(PartReader.Names)], index => PartReader.Read(rows[index]));
    }

    /// <summary>The bytes of a file that comes inside the library.</summary>
    internal static byte[] ReadResource(string name)
    {
        using var stream = typeof(PartCatalog).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidDataException($"the library lacks its resource {name}");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private Part At(int index) => _parts[index] ??= _read(index);

    private void AddAliases(ImmutableArray<ImmutableArray<string>> names)
    {
        const int Nobody = -1;
        var claims = new Dictionary<string, int>(names.Length * 2, StringComparer.Ordinal);
        for (var index = 0; index < names.Length; index++)
        {
            foreach (var alias in names[index].AsSpan()[1..])
            {
                var plain = PartName.Plain(alias);
                claims[plain] = !claims.TryGetValue(plain, out var other) || other == index ? index : Nobody;
            }
        }

        foreach (var (alias, index) in claims)
        {
            if (index != Nobody)
                _byName.TryAdd(alias, index);
        }
    }
}
