namespace Cartwright.Roms;

/// <summary>Bytes that say nothing: all zero, or all the fill.</summary>
public static class Blank
{
    /// <summary>Value of erased flash and EPROM cells.</summary>
    public const byte Erased = 0xFF;

    /// <summary>Whether bytes say nothing; no bytes say nothing too.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="fill">The fill around them.</param>
    public static bool Is(ReadOnlySpan<byte> bytes, byte fill = Erased) => !bytes.ContainsAnyExcept((byte)0) || !bytes.ContainsAnyExcept(fill);
}
