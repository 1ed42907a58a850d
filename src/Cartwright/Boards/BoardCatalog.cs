using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Boards;

/// <summary>The boards that are built in: generic ones, described by their wiring.</summary>
public static class BoardCatalog
{
    private const string Folder = "boards/";
    private const string Ending = ".json";

    /// <summary>The ids, sorted.</summary>
    public static ImmutableArray<string> Ids { get; } =
    [
        .. typeof(BoardCatalog).Assembly.GetManifestResourceNames()
            .Where(static name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(static name => name[Folder.Length..^Ending.Length])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>A board by id, letter case ignored; null when there is none.</summary>
    /// <param name="id">The id.</param>
    /// <exception cref="InvalidDataException">The catalogue itself is damaged.</exception>
    public static Board? Find(string id)
    {
        var known = Ids.FirstOrDefault(name => string.Equals(name, id.Trim(), StringComparison.OrdinalIgnoreCase));
        return known is null ? null : Load(known);
    }

    /// <summary>Every board, by id.</summary>
    public static ImmutableArray<Board> All => [.. Ids.Select(Load)];

    private static Board Load(string id)
    {
        using var stream = typeof(BoardCatalog).Assembly.GetManifestResourceStream(Folder + id + Ending)!;
        var text = new byte[stream.Length];
        stream.ReadExactly(text);
        var log = new FindingLog();
        var document = ManifestDocument.Read(id + Ending, text, ManifestOverrides.None, log);
        if (document is not null)
        {
            KeyCheck.Run(document.Root, ManifestKeys.Board, log);
        }

        var board = document is null ? null : BoardReader.Read(document.Root, id, log);
        return board is not null && log.Count == 0
            ? board
            : throw new InvalidDataException($"The board {id} of the catalogue is damaged: {string.Join(" ", log.ToSorted().Select(static finding => finding.Message))}");
    }
}
