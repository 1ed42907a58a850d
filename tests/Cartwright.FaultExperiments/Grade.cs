namespace Cartwright.FaultExperiments;

/// <summary>What an answer is worth.</summary>
internal enum Grade
{
    /// <summary>As it should be.</summary>
    Right,

    /// <summary>Nothing named, and what is really wrong stands among the candidates.</summary>
    OpenWithCandidate,

    /// <summary>Nothing named, and what is really wrong is not mentioned.</summary>
    Open,

    /// <summary>Named rightly, but a look-alike or the deciding observation was not told.</summary>
    Incomplete,

    /// <summary>Named rightly by luck: another fault explains the read-back as well.</summary>
    Lucky,

    /// <summary>Said to be equal and is not, or said to differ and does not, or a wrong name.</summary>
    Wrong,
}
