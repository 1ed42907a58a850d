using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>An image and the words of its chip.</summary>
internal sealed record TestImage(ChipShape Shape, byte[] Bytes);
