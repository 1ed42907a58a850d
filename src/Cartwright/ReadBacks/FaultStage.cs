namespace Cartwright.ReadBacks;

/// <summary>Where on the way from the file to the reader a fault acts; the order is the order of the signal.</summary>
public enum FaultStage
{
    /// <summary>In the file, before it was sent to the programmer.</summary>
    File,

    /// <summary>Between the file and the programmer.</summary>
    Sent,

    /// <summary>On the way into the cells.</summary>
    Landed,

    /// <summary>In the cells themselves.</summary>
    Cells,

    /// <summary>In cells that read now one way, now the other.</summary>
    Weak,

    /// <summary>In the chip's state.</summary>
    Chip,

    /// <summary>In the board's latch or its use.</summary>
    Board,

    /// <summary>On address lines.</summary>
    Address,

    /// <summary>On data lines.</summary>
    Data,

    /// <summary>In who drives the bus.</summary>
    Bus,

    /// <summary>In the timing of a read.</summary>
    Time,

    /// <summary>Between one insertion and the next.</summary>
    Contact,
}
