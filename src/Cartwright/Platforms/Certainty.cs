namespace Cartwright.Platforms;

/// <summary>How sure a platform is that an image is its own.</summary>
public enum Certainty
{
    /// <summary>Possible: an unfinished image, or one without a header. The manifest must say.</summary>
    Candidate,

    /// <summary>The structure fits: vectors, codes and sizes agree.</summary>
    Structural,

    /// <summary>A mark or checksum that chance does not give.</summary>
    Exact,
}
