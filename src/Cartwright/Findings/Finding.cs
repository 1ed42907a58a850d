namespace Cartwright.Findings;

/// <summary>One thing a check has to say: what is wrong, where, what was expected, what to do.</summary>
/// <param name="Rule">The row of the findings table it belongs to.</param>
/// <param name="Place">Where it is.</param>
/// <param name="Message">One plain sentence that says what is wrong, with the values at hand.</param>
/// <param name="Expected">What was expected instead; null when the message says it already.</param>
/// <param name="Remedy">What to do; null for the rule's own advice.</param>
public sealed record Finding(FindingRule Rule, SourcePlace Place, string Message, string? Expected = null, string? Remedy = null)
{
    /// <summary>The stable code, for example <c>CW1203</c>.</summary>
    public string Code => Rule.Code;

    /// <summary>How much it matters.</summary>
    public FindingSeverity Severity => Rule.Severity;

    /// <summary>What to do about it.</summary>
    public string Advice => Remedy ?? Rule.Remedy;
}
