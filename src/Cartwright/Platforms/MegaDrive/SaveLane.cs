namespace Cartwright.Platforms.MegaDrive;

/// <summary>Which bytes of the bus save memory answers on; the numbers are those of the header's type byte.</summary>
internal enum SaveLane
{
    /// <summary>Both bytes of each word.</summary>
    Word = 0,

    /// <summary>Bytes at even addresses, data lines D15-D8.</summary>
    Even = 2,

    /// <summary>Bytes at odd addresses, data lines D7-D0: the usual.</summary>
    Odd = 3,
}
