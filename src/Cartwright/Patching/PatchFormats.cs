using System.Collections.Immutable;

namespace Cartwright.Patching;

/// <summary>The patch formats that can be read, and how a file shows which it is.</summary>
public static class PatchFormats
{
    /// <summary>IPS: replaced bytes and runs within 16 MiB, no checks of its own. Source: IPS patch format.</summary>
    public static PatchFormat Ips { get; } = new("IPS", ".ips", "PATCH"u8, IpsPatch.Apply, IpsPatch.Describe, IpsMaker.Make);

    /// <summary>BPS: copies and new bytes, base, result and patch held to a CRC-32. Source: BPS File Format Specification.</summary>
    public static PatchFormat Bps { get; } = new("BPS", ".bps", "BPS1"u8, BpsPatch.Apply, BpsPatch.Describe, BpsMaker.Make);

    /// <summary>VCDIFF: copies and new bytes in windows, no check of the base. Source: RFC 3284; the Adler-32 of a window is an extension in general use.</summary>
    public static PatchFormat Vcdiff { get; } = new("VCDIFF", ".vcdiff", [0xD6, 0xC3, 0xC4], VcdiffPatch.Apply, VcdiffPatch.Describe, make: null);

    /// <summary>All rows.</summary>
    public static ImmutableArray<PatchFormat> All { get; } = [Ips, Bps, Vcdiff];

    /// <summary>The format a file's first bytes show; null when it is none of them.</summary>
    /// <param name="patch">The file, or its first bytes.</param>
    public static PatchFormat? Recognise(ReadOnlySpan<byte> patch)
    {
        foreach (var format in All)
        {
            if (patch.StartsWith(format.Magic.AsSpan())) return format;
        }

        return null;
    }

    /// <summary>The format of a name, letter case ignored; null when there is none.</summary>
    /// <param name="name">The name: <c>bps</c>.</param>
    public static PatchFormat? Find(string name) => All.FirstOrDefault(format => string.Equals(format.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The format whose ending a file name has, letter case ignored; null when there is none.</summary>
    /// <param name="file">The file's name.</param>
    public static PatchFormat? ByEnding(string file) => All.FirstOrDefault(format => file.EndsWith(format.Ending, StringComparison.OrdinalIgnoreCase));
}
