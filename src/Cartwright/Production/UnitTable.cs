using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Production;

/// <summary>Reads a table of units: comma-separated text (RFC 4180) with a column <c>serial</c> and one for each text field.</summary>
public static class UnitTable
{
    private const string Serial = "serial";

    /// <summary>Reads the units.</summary>
    /// <param name="file">The file as the user named it.</param>
    /// <param name="text">Its bytes, UTF-8.</param>
    /// <param name="fields">The fields of the run.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static ImmutableArray<RunUnit> Read(string file, byte[] text, ImmutableArray<UnitField> fields, FindingLog log)
    {
        try
        {
            return Read(file, CsvTable.Parse(file, Plain(text)), fields, log);
        }
        catch (InvalidDataException fault)
        {
            log.Add(RunFindings.BadTable, new SourcePlace(file), fault.Message + ".");
            return [];
        }
    }

    // Spreadsheets begin with a byte-order mark and end lines with CR LF, and some leave out the last line end.
    private static byte[] Plain(byte[] text)
    {
        var lines = Encoding.UTF8.GetString(text).TrimStart('\uFEFF').ReplaceLineEndings("\n").TrimEnd('\n');
        return lines.Length == 0 ? [] : Encoding.UTF8.GetBytes(lines + "\n");
    }

    private static ImmutableArray<RunUnit> Read(string file, CsvTable table, ImmutableArray<UnitField> fields, FindingLog log)
    {
        ImmutableArray<string> wanted = [Serial, .. fields.Where(static field => field.Kind == UnitFieldKind.Text).Select(static field => field.Name)];
        foreach (var missing in wanted.Where(column => !table.Header.Contains(column)))
        {
            log.Add(RunFindings.BadTable, SourcePlace.AtLine(file, 1), $"There is no column `{missing}`.", $"the columns {string.Join(", ", wanted)}", NearestName.Question(missing, table.Header));
        }

        foreach (var unknown in table.Header.Where(column => !wanted.Contains(column)))
        {
            log.Add(RunFindings.BadTable, SourcePlace.AtLine(file, 1), $"The column `{unknown}` belongs to no text field of the run.", null, NearestName.Question(unknown, wanted));
        }

        return log.HasErrors ? [] : [.. table.Rows.Select((row, index) => ReadUnit(file, row, index, wanted, log)).OfType<RunUnit>()];
    }

    private static RunUnit? ReadUnit(string file, CsvRow row, int index, ImmutableArray<string> columns, FindingLog log)
    {
        if (!long.TryParse(row[Serial], NumberStyles.None, CultureInfo.InvariantCulture, out var serial))
        {
            log.Add(RunFindings.BadTable, SourcePlace.AtLine(file, index + 2), $"`{row[Serial]}` is no serial number.", "a whole number of 0 or more");
            return null;
        }

        return new RunUnit(serial, columns.Skip(1).ToImmutableSortedDictionary(static column => column, column => row[column], StringComparer.OrdinalIgnoreCase));
    }
}
