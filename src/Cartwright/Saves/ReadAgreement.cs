namespace Cartwright.Saves;

/// <summary>What two reads of one memory say of each other.</summary>
public enum ReadAgreement
{
    /// <summary>There is one read only.</summary>
    One,

    /// <summary>Two reads, byte for byte the same.</summary>
    Equal,

    /// <summary>Two reads that differ.</summary>
    Different,
}
