namespace Cartwright.Patching;

/// <summary>What an action of a BPS patch does; the values are those of the file.</summary>
internal enum BpsCommand
{
    /// <summary>Copies from the base at the very offset that is written.</summary>
    SourceRead = 0,

    /// <summary>Takes bytes from the patch.</summary>
    TargetRead = 1,

    /// <summary>Copies from anywhere in the base.</summary>
    SourceCopy = 2,

    /// <summary>Copies from the result made so far, byte by byte.</summary>
    TargetCopy = 3,
}
