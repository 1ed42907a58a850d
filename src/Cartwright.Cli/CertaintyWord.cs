using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary>How sure a platform is, in one word.</summary>
internal static class CertaintyWord
{
    public static string Of(Certainty certainty) => certainty switch
    {
        Certainty.Exact => "exact",
        Certainty.Structural => "structural",
        _ => "candidate",
    };
}
