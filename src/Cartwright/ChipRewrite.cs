using Cartwright.Images;
using Cartwright.Plans;

namespace Cartwright;

/// <summary>What a build changes on one chip, against the build that is in the output folder.</summary>
/// <param name="Chip">The chip as it is to be.</param>
/// <param name="Plan">What has to be erased and programmed; null when its image is what it was.</param>
public sealed record ChipRewrite(ChipImage Chip, WritePlan? Plan);
