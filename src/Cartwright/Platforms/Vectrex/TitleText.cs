namespace Cartwright.Platforms.Vectrex;

/// <summary>One of the texts the BIOS shows before it starts the program.</summary>
/// <param name="Height">Height of the letters; common titles have -8.</param>
/// <param name="Width">Width of the letters; common titles have 80.</param>
/// <param name="Y">Where it begins above the centre of the screen.</param>
/// <param name="X">Where it begins to the right of the centre.</param>
/// <param name="Text">The text.</param>
internal readonly record struct TitleText(sbyte Height, sbyte Width, sbyte Y, sbyte X, string Text)
{
    /// <summary>Bytes before the text.</summary>
    public const int Numbers = 4;

    /// <summary>What ends a text.</summary>
    public const byte EndOfText = 0x80;

    /// <summary>What stands in place of a further text's height.</summary>
    public const byte EndOfHeader = 0x00;

    /// <summary>The smallest character.</summary>
    public const byte FirstLetter = 0x20;

    /// <summary>The largest character that can be drawn.</summary>
    public const byte LastLetter = 0x5F;
}
