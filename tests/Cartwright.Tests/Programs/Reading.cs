using System.Collections.Immutable;
using System.Text;
using Cartwright.Findings;
using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

/// <summary>What the reader made of a file, and small helpers to ask for it.</summary>
/// <param name="Program">The result; null after an error.</param>
/// <param name="Findings">What was said.</param>
internal sealed record Reading(ProgramFile? Program, ImmutableArray<Finding> Findings)
{
    public IEnumerable<string> Codes => Findings.Select(f => f.Code);

    public static Reading Of(string file, ReadOnlyMemory<byte> bytes, ProgramFormat? format = null, ProgramReadOptions? options = null)
    {
        var log = new FindingLog();
        var program = ProgramReader.Read(file, bytes, format, options ?? new ProgramReadOptions(), log);
        Assert.Equal(log.HasErrors, program is null);
        return new Reading(program, log.ToSorted());
    }

    public static Reading Of(string file, string text, ProgramFormat? format = null, ProgramReadOptions? options = null) =>
        Of(file, Encoding.Latin1.GetBytes(text), format, options);

    /// <summary>The segments of a file that has to be read without a word.</summary>
    public static ImmutableArray<Segment> Clean(string file, ReadOnlyMemory<byte> bytes)
    {
        var reading = Of(file, bytes);
        Assert.Empty(reading.Findings.Select(f => $"{f.Code} {f.Message}"));
        Assert.NotNull(reading.Program);
        return reading.Program.Segments;
    }

    public static ImmutableArray<Segment> Clean(string file, string text) => Clean(file, Encoding.Latin1.GetBytes(text));

    /// <summary>"address: bytes" of each segment.</summary>
    public static string Show(IEnumerable<Segment> segments) =>
        string.Join("; ", segments.Select(s => $"{s.Address:X8}: {Convert.ToHexString(s.Bytes.Span)}"));

    /// <summary>All bytes from the lowest address to the highest, gaps filled.</summary>
    public static byte[] Flatten(ImmutableArray<Segment> segments, byte fill)
    {
        var image = new byte[segments[^1].End - segments[0].Address];
        image.AsSpan().Fill(fill);
        foreach (var segment in segments) segment.Bytes.Span.CopyTo(image.AsSpan((int)(segment.Address - segments[0].Address)));
        return image;
    }
}
