using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Images;

namespace Cartwright.Cli;

/// <summary>A cart folder to start from: the files of a template with the author's words in them.</summary>
internal sealed class NewCart(string name, string title)
{
    private const string NameInTemplate = "my-game";
    private const string TitleInTemplate = "THE NEW GAME";
    private const string OfEveryPlatform = "every";

    /// <summary>The files of one platform, with their paths in the cart folder.</summary>
    public ImmutableArray<TemplateFile> Files(ImmutableArray<TemplateFile> pack, TemplateFamily family, string platform) =>
    [
        .. new[] { OfEveryPlatform, platform }
            .Select(part => $"{family.Name}/{part}/")
            .SelectMany(folder => pack.Where(file => file.Path.StartsWith(folder, StringComparison.Ordinal)).Select(file => Fill(file.Path[folder.Length..], file.Bytes)))
            .OrderBy(static file => file.Path, StringComparer.Ordinal),
    ];

    /// <summary>Writes the files; when one cannot be written, none stays.</summary>
    public static void Write(ImmutableArray<TemplateFile> files, string folder, FindingLog log)
    {
        var written = new Stack<string>();
        try
        {
            foreach (var file in files)
            {
                var path = Path.Combine(folder, file.Path);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                using var stream = new FileStream(path, FileMode.CreateNew);
                written.Push(path);
                stream.Write(file.Bytes.Span);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            foreach (var path in written)
            {
                File.Delete(path);
            }

            log.Add(OutputFindings.WriteFailed, new SourcePlace(folder), $"The files could not be written into {folder}: {fault.Message}");
        }
    }

    private TemplateFile Fill(string path, ReadOnlyMemory<byte> bytes) => new(
        path.Replace(NameInTemplate, name, StringComparison.Ordinal),
        Replace(Replace(bytes, NameInTemplate, name), TitleInTemplate, JsonEncodedText.Encode(title).Value));

    private static ReadOnlyMemory<byte> Replace(ReadOnlyMemory<byte> bytes, string words, string by)
    {
        // Latin-1 takes every byte and gives it back, so programs pass unharmed.
        var text = Encoding.Latin1.GetString(bytes.Span);
        return text.Contains(words, StringComparison.Ordinal) ? Encoding.Latin1.GetBytes(text.Replace(words, by, StringComparison.Ordinal)) : bytes;
    }
}
