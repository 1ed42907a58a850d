using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Inspection;

namespace Cartwright.Cake;

/// <summary>An image that was examined.</summary>
/// <param name="Image">The image as the platform's tables read it.</param>
/// <param name="Findings">What there is to say of it, in order of place; none is an error.</param>
public sealed record ExaminedImage(OpenedImage Image, ImmutableArray<Finding> Findings);
