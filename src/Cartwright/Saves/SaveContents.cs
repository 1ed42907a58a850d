using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>Looks whether bytes can be a save at all.</summary>
public static class SaveContents
{
    /// <summary>Bytes beyond which no save memory of a cartridge goes.</summary>
    public const int LargestUsual = 1 << 20;

    /// <summary>Looks at the bytes of a file.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="place">The file.</param>
    /// <param name="log">Receives what there is to say; an error where nothing can be done with it.</param>
    public static void Check(ReadOnlySpan<byte> bytes, SourcePlace place, FindingLog log)
    {
        if (bytes.IsEmpty)
        {
            log.Add(KeepFindings.Empty, place, "The file has 0 bytes.");
        }
        else if (bytes.Length > LargestUsual)
        {
            log.Add(KeepFindings.Unlikely, place, $"The file has {ByteSize.Describe(bytes.Length)}.", $"at most {ByteSize.Describe(LargestUsual)}");
        }
        else if (int.IsOddInteger(bytes.Length))
        {
            log.Add(KeepFindings.Unlikely, place, $"The file has {ByteSize.Describe(bytes.Length)}, an odd number.", "a power of two, as memories have");
        }
        else if (!bytes.ContainsAnyExceptInRange((byte)'\t', (byte)'~') && !bytes.ContainsAnyInRange((byte)0x0E, (byte)0x1F))
        {
            log.Add(KeepFindings.Unlikely, place, "The file holds nothing but letters, as a text does.");
        }
    }
}
