using Cartwright.Ordering;

namespace Cartwright.Patching;

/// <summary>One way to bring an image into the form a patch was made for, and whether it leads there.</summary>
/// <param name="PrefixLength">Bytes to take off the front; 0 for none.</param>
/// <param name="From">The order the image would be in.</param>
/// <param name="To">The order the patch would want; one of the two is always <see cref="ImageOrder.Console"/>.</param>
/// <param name="Fits">True when size and CRC-32 are then those the patch states.</param>
public sealed record PatchBaseTry(int PrefixLength, ImageOrder From, ImageOrder To, bool Fits);
