namespace Cartwright.Cli.Tests.Cases;

/// <summary>What a run of the command gave.</summary>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="Output">Its standard output.</param>
/// <param name="Errors">Its standard error.</param>
internal sealed record CaseResult(int ExitCode, string Output, string Errors);
