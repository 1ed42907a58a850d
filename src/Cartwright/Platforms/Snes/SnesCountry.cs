using System.Collections.Immutable;

namespace Cartwright.Platforms.Snes;

/// <summary>A country code of the header and what goes with it (fullsnes, cartridge chapters).</summary>
/// <param name="Code">The value of the field.</param>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Television">The picture the console of that country makes; null where the code does not say.</param>
/// <param name="Letter">Last letter of game codes of that country; null where there is none.</param>
/// <param name="Meaning">The countries.</param>
internal sealed record SnesCountry(byte Code, string Name, string? Television, char? Letter, string Meaning)
{
    public static ImmutableArray<SnesCountry> All { get; } =
    [
        new(0x00, "japan", "NTSC", 'J', "Japan, or any"),
        new(0x01, "north-america", "NTSC", 'E', "USA and Canada"),
        new(0x02, "europe", "PAL", 'P', "Europe, Oceania, Asia"),
        new(0x03, "scandinavia", "50 Hz", 'W', "Scandinavia"),
        new(0x04, "finland", "50 Hz", null, "Finland"),
        new(0x05, "denmark", "50 Hz", null, "Denmark"),
        new(0x06, "france", "50 Hz", 'F', "France"),
        new(0x07, "netherlands", "50 Hz", 'H', "Netherlands"),
        new(0x08, "spain", "50 Hz", 'S', "Spain"),
        new(0x09, "germany", "50 Hz", 'D', "Germany, Austria, Switzerland"),
        new(0x0A, "italy", "50 Hz", 'I', "Italy"),
        new(0x0B, "china", "50 Hz", 'C', "China, Hong Kong"),
        new(0x0C, "indonesia", "50 Hz", null, "Indonesia"),
        new(0x0D, "south-korea", "NTSC", 'K', "South Korea"),
        new(0x0E, "common", null, 'A', "common to several countries"),
        new(0x0F, "canada", "NTSC", 'N', "Canada"),
        new(0x10, "brazil", "PAL-M, 60 Hz", 'B', "Brazil"),
        new(0x11, "australia", "PAL", 'U', "Australia"),
        new(0x12, "other-x", null, 'X', "other"),
        new(0x13, "other-y", null, 'Y', "other"),
        new(0x14, "other-z", null, 'Z', "other"),
    ];
}
