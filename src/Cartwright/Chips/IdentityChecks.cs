using System.Globalization;
using Cartwright.Findings;

namespace Cartwright.Chips;

/// <summary>Tells what is doubtful about an identity that a chip answered.</summary>
public static class IdentityChecks
{
    /// <summary>Reads an identity from the words a user gives; null, and a finding, when they are none.</summary>
    /// <param name="words">The words.</param>
    /// <param name="log">Receives what is wrong or doubtful.</param>
    public static ChipIdentity? Read(IReadOnlyList<string> words, FindingLog log)
    {
        if (!ChipIdentity.TryParse(words, out var identity))
        {
            log.Add(CfiFindings.BadIdentity, SourcePlace.None, $"`{string.Join(' ', words)}` is not an identity.");
            return null;
        }

        Check(identity!, log);
        if (!PartCatalog.BuiltIn.All.Any(identity!.Fits))
        {
            log.Add(CfiFindings.NoSuchIdentity, SourcePlace.None, "No part of the catalogue is known to answer so.");
        }

        return identity;
    }

    private static void Check(ChipIdentity identity, FindingLog log)
    {
        var isOdd = MakerCodes.HasOddParity(identity.Maker);
        var isKnown = !MakerCodes.Of(identity.Maker, identity.Bank).IsEmpty;
        var maker = identity.Maker.ToString("X2", CultureInfo.InvariantCulture);
        if (identity.Maker is 0x00 or 0xFF || (identity.Device is [var only] && only == identity.Maker) || (!isOdd && !isKnown))
        {
            log.Add(CfiFindings.NoIdentityMode, SourcePlace.None, $"{maker} {DeviceText(identity)} is hardly the identity of a chip.");
        }
        else if (!isOdd)
        {
            log.Add(CfiFindings.EvenParity, SourcePlace.None, $"{maker} has an even number of ones, and is no code of JEP106.");
        }
    }

    /// <summary>The device code in hexadecimal, words joined by a plus sign.</summary>
    /// <param name="identity">The identity.</param>
    public static string DeviceText(ChipIdentity identity) =>
        string.Join('+', identity.Device.Select(static word => word.ToString(word > 0xFF ? "X4" : "X2", CultureInfo.InvariantCulture)));
}
