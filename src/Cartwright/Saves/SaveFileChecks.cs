using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>What every verb asks of a file before it takes it for a save.</summary>
public static class SaveFileChecks
{
    /// <summary>Largest file that is taken for a save: twice what an expanded save of the largest memory has.</summary>
    public const int LargestFile = 2 << 20;

    /// <summary>True for a file that can be a save at all; findings where it cannot, and a warning where it is text.</summary>
    /// <param name="file">The file as the user wrote it.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static bool IsUsable(string file, ReadOnlySpan<byte> bytes, FindingLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        var place = new SourcePlace(file);
        if (bytes.IsEmpty)
        {
            log.Add(SaveFindings.Empty, place, "The file has 0 bytes.");
            return false;
        }

        if (bytes.Length > LargestFile)
        {
            log.Add(SaveFindings.TooLarge, place, $"The file has {ByteSize.Describe(bytes.Length)}.", $"at most {ByteSize.Describe(LargestFile)}");
            return false;
        }

        if (IsText(bytes))
            log.Add(SaveFindings.Text, place, "The file holds nothing but printable letters and line ends.");

        return true;
    }

    private static bool IsText(ReadOnlySpan<byte> bytes) =>
        bytes.Length > 1 && bytes.ContainsAnyExcept(bytes[0]) && !bytes.ContainsAnyExcept(TextBytes);

    private static readonly System.Buffers.SearchValues<byte> TextBytes =
        System.Buffers.SearchValues.Create([(byte)'\t', (byte)'\n', (byte)'\r', .. Enumerable.Range(' ', '~' - ' ' + 1).Select(static letter => (byte)letter)]);
}
