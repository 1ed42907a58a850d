using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Cartwright.Findings;
using Cartwright.Patching;

namespace Cartwright.Cli;

/// <summary>The files of the templates, just as the package for <c>dotnet new</c> holds them, inside the command.</summary>
/// <remarks>They are kept as a BPS patch of nothing: programs are mostly fill, and so they take a quarter of their size.</remarks>
internal static class TemplatePack
{
    /// <summary>Name of the resource.</summary>
    public const string Resource = "templates.bps";

    /// <summary>Every file, in order of path.</summary>
    public static ImmutableArray<TemplateFile> Open()
    {
        using var resource = typeof(TemplatePack).Assembly.GetManifestResourceStream(Resource)!;
        var packed = new byte[resource.Length];
        resource.ReadExactly(packed);
        return Unpack(packed);
    }

    /// <summary>Files made small.</summary>
    public static byte[] Pack(IEnumerable<TemplateFile> files)
    {
        using var stream = new MemoryStream();
        foreach (var file in files.OrderBy(static file => file.Path, StringComparer.Ordinal))
        {
            stream.Write(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{file.Bytes.Length} {file.Path}\n")));
            stream.Write(file.Bytes.Span);
        }

        return Patch.Make(PatchFormats.Bps, [], stream.ToArray(), new FindingLog(), new SourcePlace(Resource))!;
    }

    // Before the bytes of each file stands a line: its size and its path.
    private static ImmutableArray<TemplateFile> Unpack(ReadOnlySpan<byte> packed)
    {
        var files = ImmutableArray.CreateBuilder<TemplateFile>();
        ReadOnlyMemory<byte> rest = Patch.Apply([], packed, new FindingLog(), new SourcePlace(Resource))!.Output;
        while (!rest.IsEmpty)
        {
            var end = rest.Span.IndexOf((byte)'\n');
            var line = Encoding.UTF8.GetString(rest.Span[..end]).Split(' ', 2);
            var size = int.Parse(line[0], CultureInfo.InvariantCulture);
            files.Add(new TemplateFile(line[1], rest.Slice(end + 1, size)));
            rest = rest[(end + 1 + size)..];
        }

        return files.DrainToImmutable();
    }
}
