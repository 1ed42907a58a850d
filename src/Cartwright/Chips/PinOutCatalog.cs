using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Chips;

/// <summary>The pin-outs Cartwright knows. They are read when the first one is asked for, each when it is.</summary>
public sealed class PinOutCatalog
{
    private static readonly Lazy<PinOutCatalog> Embedded = new(static () => new PinOutCatalog(PartCatalog.ReadResource("chips/pinouts.csv")));

    private static readonly char[] Digits = [.. "0123456789"];

    private readonly Dictionary<string, CsvRow> _rows = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads a catalogue from the text of a pin-out table.</summary>
    /// <exception cref="InvalidDataException">The table is malformed.</exception>
    internal PinOutCatalog(byte[] csv)
    {
        foreach (var row in CsvTable.Parse("pinouts.csv", csv).Rows)
        {
            if (!_rows.TryAdd(row.Required("pinout"), row))
                throw new InvalidDataException($"two pin-outs are called {row["pinout"]}");
        }
    }

    /// <summary>The catalogue that comes with the library, read on first use.</summary>
    public static PinOutCatalog BuiltIn => Embedded.Value;

    /// <summary>All pin-outs, by name.</summary>
    public ImmutableArray<PinOut> All => [.. _rows.Values.Select(Read).OrderBy(static pinOut => pinOut.Name, StringComparer.Ordinal)];

    /// <summary>The pin-out of that name; null when the catalogue has none.</summary>
    /// <param name="name">For example <c>DIP32-39SF040</c>.</param>
    public PinOut? Find(string name) => _rows.TryGetValue(name, out var row) ? Read(row) : null;

    /// <summary>The pin-outs of a part, one a package; empty when none is known well enough.</summary>
    /// <param name="part">The part.</param>
    public ImmutableArray<PinOut> Of(Part part) => [.. part.Pinouts.Select(Find).OfType<PinOut>()];

    /// <summary>The pin-out of a part in one package; null when it is not known.</summary>
    /// <param name="part">The part.</param>
    /// <param name="package">Letters and number of pins, for example <c>DIP32</c> or <c>PLCC-32</c>; the letters alone do where the part
    /// comes in one such package. SO8, SO28 and TSOP28 are numbered as the DIP; a part that also comes with turned pins has no single answer.</param>
    public PinOut? Find(Part part, string package)
    {
        var wanted = PartName.Plain(package);
        var fitting = Of(part).Where(pinOut => wanted == pinOut.Package || wanted == pinOut.Package.TrimEnd(Digits) || HasItsNumbers(pinOut, wanted)).ToList();
        return fitting is [var only] ? only : null;
    }

    private static bool HasItsNumbers(PinOut pinOut, string package) =>
        (pinOut.Package == "DIP8" && package == "SO8") || (pinOut.Package == "DIP28" && package is "SO28" or "TSOP28");

    private static PinOut Read(CsvRow row) => new()
    {
        Name = row.Required("pinout"),
        Status = row.Read<PinOutStatus>("status", PartWords.PinOutStatuses.TryRead),
        Source = row.Required("source"),
        Signals = PartFigures.Names(row.Required("signals")),
        Notes = row.Read<ImmutableSortedDictionary<int, string>>("notes", TryNotes),
    };

    // "20=shared pin | 31=open drain", or blank.
    private static bool TryNotes(string text, out ImmutableSortedDictionary<int, string> notes)
    {
        var found = ImmutableSortedDictionary.CreateBuilder<int, string>();
        foreach (var note in text.Split(" | ", StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = note.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0 && int.TryParse(note.AsSpan(0, equals), NumberStyles.None, CultureInfo.InvariantCulture, out var pin))
                found[pin] = note[(equals + 1)..];
        }

        notes = found.ToImmutable();
        return notes.Count == text.Split(" | ", StringSplitOptions.RemoveEmptyEntries).Length;
    }
}
