using System.Collections.Immutable;
using Cartwright.Roms;

namespace Cartwright.Platforms;

/// <summary>Tells from bytes alone which platforms an image may be for.</summary>
/// <param name="catalog">The platforms to ask.</param>
public sealed class Recogniser(PlatformCatalog catalog)
{
    private const int Shortest = 16;

    /// <summary>Every claim on an image: the surest first, then by score, then in the order of the catalogue.</summary>
    /// <param name="file">The whole file.</param>
    public ImmutableArray<RecognisedPlatform> Rank(ReadOnlySpan<byte> file)
    {
        // Blank data proves nothing, whatever fields it could be read as.
        var claims = new List<RecognisedPlatform>();
        foreach (var platform in file.Length < Shortest || Blank.Is(file) ? [] : catalog.All)
        {
            if (platform.Recognise(file) is { } claim)
            {
                claims.Add(new RecognisedPlatform(platform, claim));
            }
        }

        claims.RemoveAll(row => claims.Exists(other => Covers(other, row)));
        return [.. claims.OrderByDescending(static row => row.Claim.Certainty).ThenByDescending(static row => row.Claim.Score)];
    }

    /// <summary>The one platform in the best class of certainty; null when there is none, or several: then nothing is decided.</summary>
    /// <param name="ranked">The claims.</param>
    public static RecognisedPlatform? Decide(ImmutableArray<RecognisedPlatform> ranked) =>
        ranked.Length == 1 || (ranked.Length > 1 && ranked[0].Claim.Certainty > ranked[1].Claim.Certainty) ? ranked[0] : null;

    private static bool Covers(RecognisedPlatform add, RecognisedPlatform plain) =>
        add.Claim.Includes == plain.Platform.Facts.Id && add.Claim.Certainty >= plain.Claim.Certainty;
}
