namespace Cartwright.Findings;

/// <summary>How much a finding matters.</summary>
public enum FindingSeverity
{
    /// <summary>Worth knowing; nothing is wrong.</summary>
    Note,

    /// <summary>Likely to hurt on a board or to mislead other readers of the image; does not stop a build.</summary>
    Warning,

    /// <summary>The request cannot be carried out, or the result would be wrong. A build with an error writes nothing.</summary>
    Error,
}
