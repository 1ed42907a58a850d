using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Patching;

namespace Cartwright.Tests.Patching;

internal sealed record PatchRun(PatchResult? Result, ImmutableArray<Finding> Findings)
{
    public byte[]? Output => Result?.Output;

    public IEnumerable<string> Codes => Findings.Select(finding => finding.Code);

    public string Text => string.Join('\n', Findings.Select(FindingText.Line));
}
