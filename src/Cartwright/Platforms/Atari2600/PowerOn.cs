namespace Cartwright.Platforms.Atari2600;

/// <summary>Which bank shows when the console is switched on.</summary>
public enum PowerOn
{
    /// <summary>There is only one.</summary>
    Only,

    /// <summary>Any of them: the hardware leaves it open.</summary>
    Any,

    /// <summary>The one named by number.</summary>
    Known,

    /// <summary>The last part of the ROM, which never leaves the top of the window.</summary>
    Fixed,
}
