namespace Cartwright.Tests.Oracles;

/// <summary>What a tool left behind.</summary>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="Output">Its standard output.</param>
/// <param name="Error">Its standard error.</param>
internal sealed record ToolResult(int ExitCode, string Output, string Error);
