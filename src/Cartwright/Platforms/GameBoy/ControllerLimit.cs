namespace Cartwright.Platforms.GameBoy;

/// <summary>How much ROM and RAM a bank controller can show together.</summary>
/// <param name="Rom">Most bytes of ROM.</param>
/// <param name="Ram">Most bytes of RAM that go with it; null when the sources do not say.</param>
/// <param name="Caution">What to mind when only this limit holds the cart; null for nothing.</param>
public sealed record ControllerLimit(long Rom, long? Ram, string? Caution = null)
{
    /// <summary>Whether so much fits.</summary>
    /// <param name="rom">Bytes of ROM.</param>
    /// <param name="ram">Bytes of RAM.</param>
    public bool Holds(long rom, long ram) => rom <= Rom && (Ram is null || ram <= Ram);
}
