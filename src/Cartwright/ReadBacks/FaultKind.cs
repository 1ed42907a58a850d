namespace Cartwright.ReadBacks;

/// <summary>One row of the table of everything that can be wrong between an expected chip image and its read-back.</summary>
/// <param name="Name">The word for it: <c>data-stuck-low</c>.</param>
/// <param name="Stage">Where on the signal's way it acts.</param>
/// <param name="Meaning">What has happened, a clause.</param>
/// <param name="Look">Where to look first at the bench, a sentence.</param>
public sealed record FaultKind(string Name, FaultStage Stage, string Meaning, string Look);
