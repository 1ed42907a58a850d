namespace Cartwright.Tests.Oracles;

/// <summary>What a program left when it ended.</summary>
/// <param name="ExitCode">0 for success, as is the custom.</param>
/// <param name="Output">What it wrote to standard output.</param>
/// <param name="Error">What it wrote to standard error.</param>
internal sealed record ToolResult(int ExitCode, string Output, string Error);
