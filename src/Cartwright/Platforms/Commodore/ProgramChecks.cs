using System.Globalization;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>Checks of programs before they are put into a ROM: what belongs to files and not to chips.</summary>
internal static class ProgramChecks
{
    /// <summary>Tells of a load address or a container in front of a program.</summary>
    /// <param name="segments">The programs' bytes.</param>
    /// <param name="signature">The machine's signature of a container.</param>
    /// <param name="isLoaded">Whether a load address stands before bytes that have the machine's mark.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static void Check(ReadOnlySpan<PlacedSegment> segments, string signature, Func<ReadOnlyMemory<byte>, bool> isLoaded, FindingLog log)
    {
        foreach (var segment in segments)
        {
            if (CrtFile.Read(segment.Bytes.Span, signature) is { } file)
            {
                log.Add(CommodoreFindings.ContainerInside, segment.Place, $"{segment.Program} is a container: {file.Words}.", remedy: Remedy(segment, file));
            }
            else if (isLoaded(segment.Bytes))
            {
                log.Add(CommodoreFindings.LoadAddress, segment.Place, $"{segment.Program} begins with {Convert.ToHexString(segment.Bytes.Span[..2])}, a load address, and the mark lies 6 bytes behind its start instead of 4.");
            }
        }
    }

    private static string? Remedy(PlacedSegment segment, CrtFile file) => file.Runs.Length == 1
        ? string.Create(CultureInfo.InvariantCulture, $"Give {segment.Program} `\"skip\": {file.Runs[0].Start}` and `\"length\": {file.Runs[0].Length}`.")
        : null;
}
