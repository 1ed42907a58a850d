namespace Cartwright.Findings;

/// <summary>One row of the table of everything a check may have to say.</summary>
/// <param name="Code">The stable code, <c>CW</c> and four digits. The first digit names the stage.</param>
/// <param name="Severity">The severity a finding of this rule has.</param>
/// <param name="Title">A short name, as a heading would have it.</param>
/// <param name="Why">Why it matters at the bench.</param>
/// <param name="Remedy">What to do about it, when the finding itself says nothing more exact.</param>
public sealed record FindingRule(string Code, FindingSeverity Severity, string Title, string Why, string Remedy);
