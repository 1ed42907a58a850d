namespace Cartwright.Saves;

/// <summary>What is asked of a conversion.</summary>
/// <param name="Platform">The platform's id.</param>
/// <param name="From">How the file is written.</param>
/// <param name="To">How the result is to be written.</param>
public sealed record SaveConversion(string Platform, SaveForm From, SaveForm To)
{
    /// <summary>Bytes the memory is to have; null for as many as the file's.</summary>
    public int? Size { get; init; }

    /// <summary>What stands behind contents that are lengthened.</summary>
    public SavePad Pad { get; init; } = new(0xFF);

    /// <summary>True when the record of a clock may be left out.</summary>
    public bool DropClock { get; init; }

    /// <summary>The board's lines the file's memory went through; null where they run straight.</summary>
    public SaveWiring? FromWiring { get; init; }

    /// <summary>The board's lines the result's memory goes through; null where they run straight.</summary>
    public SaveWiring? ToWiring { get; init; }
}
