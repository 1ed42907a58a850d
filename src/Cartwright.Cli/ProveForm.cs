namespace Cartwright.Cli;

/// <summary>How a proof is told.</summary>
internal readonly record struct ProveForm(bool IsJson, bool IsBrief);
