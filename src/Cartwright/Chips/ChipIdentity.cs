using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Chips;

/// <summary>What a chip answered when it was asked for its identity.</summary>
/// <param name="Bank">The bank of the maker's code: 1, and one more for each continuation code.</param>
/// <param name="Maker">The byte of the maker.</param>
/// <param name="Device">The device code: one word, or three.</param>
public sealed record ChipIdentity(int Bank, byte Maker, ImmutableArray<int> Device)
{
    private const int MostContinuations = 15;

    /// <summary>Reads an identity from words in hexadecimal; false when they are none.</summary>
    /// <param name="words">Continuation codes 7F, the maker's byte, and one or three device words; 0x in front does not count.</param>
    /// <param name="identity">The identity.</param>
    public static bool TryParse(IReadOnlyList<string> words, out ChipIdentity? identity)
    {
        identity = null;
        var numbers = new List<int>();
        foreach (var word in words)
        {
            if (!TryWord(word, out var number))
            {
                return false;
            }

            numbers.Add(number);
        }

        var bank = 1 + numbers.TakeWhile(static number => OneByte(number) == MakerCodes.Continuation).Count();
        var device = numbers.Skip(bank).ToImmutableArray();
        if (bank > MostContinuations + 1 || device.Length is not (1 or 3) || OneByte(numbers[bank - 1]) is not { } maker)
        {
            return false;
        }

        identity = new ChipIdentity(bank, maker, device);
        return true;
    }

    /// <summary>True when a part of the catalogue answers so, as far as its codes are known. Byte mode shows the low byte of each word.</summary>
    /// <param name="part">The part.</param>
    public bool Fits(Part part) => FitsMaker(part) && FitsDevice(part);

    /// <summary>True when a part of the catalogue has this device code, whoever made it.</summary>
    /// <param name="part">The part.</param>
    public bool FitsDevice(Part part)
    {
        var text = part.Identity.DeviceId;
        var codes = text.Split([' ', '/', '+', ';', ','], StringSplitOptions.RemoveEmptyEntries).Where(static word => TryWord(word, out _)).ToList();
        var isOfThree = text.Contains('+', StringComparison.Ordinal);
        return isOfThree == (Device.Length == 3)
            ? Device.All(word => codes.Any(code => Same(word, code)))
            : isOfThree && Same(Device[0], codes[0]);
    }

    private bool FitsMaker(Part part)
    {
        var text = part.Identity.ManufacturerId;
        return text.Length >= 2
            && byte.Parse(text.AsSpan(0, 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture) == Maker
            && (Bank == 1 || text.Contains("after 7F", StringComparison.Ordinal));
    }

    // A code of two digits is compared with the low byte of one of four, which is what byte mode shows.
    private static bool Same(int word, string code)
    {
        _ = TryWord(code, out var known);
        return word == known || (word <= 0xFF && word == (known & 0xFF));
    }

    // 00BF and BFBF are BF on sixteen lines.
    private static byte? OneByte(int number) => number <= 0xFF || number >> 8 == (number & 0xFF) ? (byte)number : null;

    private static bool TryWord(string word, out int number)
    {
        var digits = word.StartsWith("0x", StringComparison.OrdinalIgnoreCase) ? word.AsSpan(2) : word;
        number = 0;
        return digits.Length is 2 or 4 && int.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out number);
    }
}
