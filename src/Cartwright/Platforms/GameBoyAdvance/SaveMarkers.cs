using System.Buffers.Text;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>The texts by which software tells the kind of save memory: they stand at a multiple of 4, a name, <c>_V</c>, and three digits or <c>nnn</c> (GBATEK, GBA Cart Backup IDs).</summary>
public static class SaveMarkers
{
    private const int Alignment = 4;
    private const int VersionLength = 3;

    /// <summary>The names and what they stand for, none the beginning of a later one.</summary>
    public static IReadOnlyList<(string Name, string Meaning)> Kinds { get; } =
    [
        ("EEPROM_V", "serial EEPROM of 512 bytes or 8 KiB"),
        ("SRAM_V", "SRAM or FRAM of 32 KiB"),
        ("FLASH1M_V", "flash of 128 KiB"),
        ("FLASH512_V", "flash of 64 KiB"),
        ("FLASH_V", "flash of 64 KiB"),
    ];

    /// <summary>Every marker in a ROM: where it is and which row of <see cref="Kinds"/>.</summary>
    /// <param name="rom">The ROM.</param>
    public static IReadOnlyList<(int Offset, int Kind)> Find(ReadOnlySpan<byte> rom)
    {
        var found = new List<(int Offset, int Kind)>();
        for (var at = rom.IndexOf("_V"u8); at >= 0 && at < rom.Length; at = Next(rom, at))
        {
            for (var kind = 0; kind < Kinds.Count; kind++)
            {
                var start = at + 2 - Kinds[kind].Name.Length;
                if (start >= 0 && start % Alignment == 0 && Matches(rom[start..], Kinds[kind].Name))
                {
                    found.Add((start, kind));
                    break;
                }
            }
        }

        return found;
    }

    private static int Next(ReadOnlySpan<byte> rom, int at)
    {
        var step = rom[(at + 2)..].IndexOf("_V"u8);
        return step < 0 ? -1 : at + 2 + step;
    }

    private static bool Matches(ReadOnlySpan<byte> text, string name)
    {
        if (text.Length < name.Length + VersionLength || !System.Text.Ascii.Equals(text[..name.Length], name))
        {
            return false;
        }

        var version = text.Slice(name.Length, VersionLength);
        return version.SequenceEqual("nnn"u8) || (Utf8Parser.TryParse(version, out uint _, out var read) && read == VersionLength);
    }
}
