using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.TestImages;

namespace Cartwright;

/// <summary>Writes the record of a test image in the form of <see cref="BuildRecord"/>: board, chips and files as there, and what the image is for.</summary>
public static class TestImageRecord
{
    /// <summary>Writes the record.</summary>
    /// <param name="set">The images.</param>
    /// <param name="files">Their files with their digests.</param>
    /// <returns>UTF-8 JSON with a line end at its end.</returns>
    public static byte[] Write(TestImageSet set, ImmutableArray<WrittenFile> files)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            var build = new CartBuild([]) { Board = set.Board, Chips = set.Chips };
            json.WriteStartObject();
            json.WriteNumber("record", BuildRecord.Form);
            json.WriteString("cartwright", LibraryVersion.Text);
            WriteKind(json, set);
            BuildRecord.WriteBoard(json, build);
            BuildRecord.WriteChips(json, build);
            BuildRecord.WriteFiles(json, files);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void WriteKind(Utf8JsonWriter json, TestImageSet set)
    {
        json.WriteStartObject("testImage");
        json.WriteString("kind", set.Kind.Name);
        json.WriteString("holds", set.Kind.Holds);
        json.WriteString("tells", set.Kind.Tells);
        json.WriteString("cannotTell", set.Kind.CannotTell);
        if (set.Kind.HasBanks)
        {
            json.WriteNumber("bankSize", set.Settings.BankSize);
        }

        if (set.Kind.HasSeed)
        {
            json.WriteStartObject("seeds");
            foreach (var chip in set.Chips)
            {
                json.WriteNumber(chip.Site.Name, set.SeedOf(chip));
            }

            json.WriteEndObject();
        }

        WriteFilled(json, set.Filled);
        json.WriteEndObject();
    }

    private static void WriteFilled(Utf8JsonWriter json, ImmutableArray<FilledStretch> filled)
    {
        if (filled.IsEmpty)
        {
            return;
        }

        json.WriteStartArray("filled");
        foreach (var stretch in filled)
        {
            json.WriteStartObject();
            json.WriteString("offset", Number.Hex(stretch.Offset, 6));
            json.WriteNumber("length", stretch.Length);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
