using System.Collections.Immutable;
using Cartwright.Programs;

namespace Cartwright.Manifests;

/// <summary>The words the manifest uses for choices, each list once.</summary>
public static class ManifestWords
{
    /// <summary>Program formats.</summary>
    public static ImmutableSortedDictionary<string, ProgramFormat> ProgramFormats { get; } = Words(
        ("raw", ProgramFormat.Raw), ("intel-hex", ProgramFormat.IntelHex), ("s-record", ProgramFormat.SRecord), ("elf", ProgramFormat.Elf));

    /// <summary>Formats of chip files.</summary>
    public static ImmutableSortedDictionary<string, ImageFormat> ImageFormats { get; } = Words(
        ("raw", ImageFormat.Raw), ("intel-hex", ImageFormat.IntelHex), ("s-record", ImageFormat.SRecord));

    /// <summary>Word orders of files for 16-bit chips.</summary>
    public static ImmutableSortedDictionary<string, WordOrder> WordOrders { get; } = Words(
        ("bus", WordOrder.Bus), ("programmer", WordOrder.Programmer));

    private static ImmutableSortedDictionary<string, T> Words<T>(params (string Word, T Meaning)[] rows) =>
        rows.ToImmutableSortedDictionary(static row => row.Word, static row => row.Meaning, StringComparer.OrdinalIgnoreCase);
}
