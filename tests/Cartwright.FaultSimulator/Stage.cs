namespace Cartwright.FaultSimulator;

/// <summary>Where on the way from the file to the read-back a fault acts, in the order of the signal.</summary>
public enum Stage
{
    File,
    Sent,
    Landed,
    Cells,
    Weak,
    Chip,
    Board,
    Address,
    Data,
    Bus,
    Time,
    Noise,
}
