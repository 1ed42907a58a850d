namespace Cartwright.Platforms;

/// <summary>A platform and its claim on an image.</summary>
/// <param name="Platform">The platform.</param>
/// <param name="Claim">Its claim.</param>
public sealed record RecognisedPlatform(Platform Platform, RecognitionClaim Claim);
