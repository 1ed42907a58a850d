using System.Collections.Immutable;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Texts of the header's system type.</summary>
internal static class SystemTypes
{
    /// <summary>Length of the field in bytes.</summary>
    public const int Length = 16;

    /// <summary>The usual texts (ROM header reference).</summary>
    public static ImmutableArray<string> Known { get; } =
    [
        "SEGA MEGA DRIVE", "SEGA GENESIS", "SEGA 32X", MegaDriveHeader.BankSystem, "SEGA MEGAWIFI", "SEGA PICO", "SEGA TERA68K", "SEGA TERA286",
    ];

    /// <summary>Whether a console with a lock starts the game: <c>SEGA</c> at the first byte, or (from memory) at the second behind a space.</summary>
    /// <param name="field">The field's first bytes.</param>
    public static bool OpensLock(ReadOnlySpan<byte> field) => field.StartsWith("SEGA"u8) || field.StartsWith(" SEGA"u8);
}
