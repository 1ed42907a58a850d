using System.Text.Json;
using Cartwright.Boards;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.TestImages;

namespace Cartwright.Cli;

/// <summary>Prints the kinds of test images, and what was made of one.</summary>
internal static class PatternReport
{
    public static void WriteKinds(TextWriter output, bool json)
    {
        if (!json)
        {
            Columns.Write(output, "", [.. TestImageKinds.All.Select(static kind => new[] { kind.Name, kind.Tells })]);
            return;
        }

        Json.Write(output, static writer =>
        {
            writer.WriteStartArray("kinds");
            foreach (var kind in TestImageKinds.All)
            {
                writer.WriteStartObject();
                WriteKind(writer, kind);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        });
    }

    public static void Write(TextWriter output, PatternFiles made, string folder, bool json)
    {
        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, made, folder));
            return;
        }

        var kind = made.Set.Kind;
        output.WriteLine($"{kind.Name}: {kind.Holds}.");
        output.WriteLine($"One read of it tells {kind.Tells}.");
        output.WriteLine($"It cannot tell {kind.CannotTell}.");
        if (!made.Set.Filled.IsEmpty)
        {
            output.WriteLine($"Filled {ByteSize.Describe(made.Set.Filled.Sum(static stretch => (long)stretch.Length))}:");
            Columns.Write(output, "  ", [.. made.Set.Filled.Select(static stretch => new[] { Number.Hex(stretch.Offset, 6), ByteSize.Words(stretch.Length) })]);
        }

        output.WriteLine($"Written into {folder}");
        Columns.Write(output, "  ", [.. made.Files.Select(file => Cells(file, made.Set.Board))]);
    }

    // The record holds the version, so its own digest says nothing of the image.
    private static string[] Cells(OutputFile file, Board board) =>
        file.Kind == OutputKind.Record
            ? [file.Name, "", "", "the record"]
            : [file.Name, ByteSize.Words(file.Digest().Size), $"CRC-32 {file.Digest().Crc32Text}", Meaning(file, board)];

    private static string Meaning(OutputFile file, Board board) =>
        file.Chip is { } chip ? $"for {chip.Site.Name}, and what a read of that chip must give; first word {chip.WordText(0)}"
        : SingleChip.Is(board) ? "the filled image"
        : "what a read of the whole cartridge must give";

    private static void WriteJson(Utf8JsonWriter json, PatternFiles made, string folder)
    {
        WriteKind(json, made.Set.Kind);
        json.WriteString("folder", folder);
        json.WriteString("record", made.Files[^1].Name);
        json.WriteStartArray("filled");
        foreach (var stretch in made.Set.Filled)
        {
            json.WriteStartObject();
            json.WriteNumber("offset", stretch.Offset);
            json.WriteNumber("length", stretch.Length);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("files");
        foreach (var file in made.Files.Where(static file => file.Kind != OutputKind.Record))
        {
            var digest = file.Digest();
            json.WriteStartObject();
            json.WriteString("file", file.Name);
            json.WriteString("means", Meaning(file, made.Set.Board));
            json.WriteNumber("size", digest.Size);
            json.WriteString("crc32", digest.Crc32Text);
            json.WriteString("sha256", digest.Sha256);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteKind(Utf8JsonWriter json, TestImageKind kind)
    {
        json.WriteString("kind", kind.Name);
        json.WriteString("holds", kind.Holds);
        json.WriteString("tells", kind.Tells);
        json.WriteString("cannotTell", kind.CannotTell);
    }
}
