namespace Cartwright.Platforms.Commodore;

/// <summary>Levels of the two lines by which a C64 cartridge says how it is to be seen; 0 is low, which is asserted.</summary>
/// <param name="Exrom">Level of /EXROM: 0 or 1.</param>
/// <param name="Game">Level of /GAME: 0 or 1.</param>
public readonly record struct CrtLines(int Exrom, int Game)
{
    /// <summary>ROML at $8000.</summary>
    public static CrtLines OneWindow { get; } = new(0, 1);

    /// <summary>ROML at $8000 and ROMH at $A000.</summary>
    public static CrtLines TwoWindows { get; } = new(0, 0);

    /// <summary>ROML at $8000 and ROMH at $E000 in place of the KERNAL.</summary>
    public static CrtLines Ultimax { get; } = new(1, 0);

    /// <summary>What no cartridge at all looks like.</summary>
    public static CrtLines None { get; } = new(1, 1);

    /// <inheritdoc/>
    public override string ToString() => $"{CrtHeader.Word(Exrom)} and {CrtHeader.Word(Game)}";
}
