using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Snes;

// Header fields held against each other (fullsnes, cartridge chapters).
internal static class SnesHeaderCheck
{
    private static readonly ImmutableArray<string> Coded = ["chipset", "saveRam", "romSize", "region", "chipsetSubtype"];

    public static void Run(CartView cart, RegionImage region, SnesMapping mapping, FindingLog log)
    {
        CheckMapMode(cart, region, mapping, log);
        CheckChipset(cart, log);
        CheckCodes(cart, log);
        CheckExtended(cart, log);
        CheckGameCode(cart, log);
        if (Raw(cart, "title") is [not 0, .., 0] && !IsCustom(cart))
        {
            log.Add(SnesFindings.TitleZeros, cart.Place("header:title"), $"The title ends with zeros: {cart["title"]}.");
        }

        if (cart["speed"] == "fast")
        {
            log.Add(SnesFindings.FastParts, cart.Place("header:speed"), "The header asks for fast ROM.");
        }
    }

    private static void CheckMapMode(CartView cart, RegionImage region, SnesMapping mapping, FindingLog log)
    {
        if (Raw(cart, "mapMode") is not [var value])
        {
            return;
        }

        var mode = (byte)(value & 0x0F);
        if (!mapping.Modes.Contains(mode))
        {
            log.Add(SnesFindings.MapModeMismatch, cart.Place("header:mapMode"), $"The map mode byte is 0x{value:X2} ({cart["mapMode"]}), and the mapping is {mapping.Name}.");
        }

        if (mode == 0xA && region.Length is 3 << 20 or 5 << 20)
        {
            log.Add(SnesFindings.DisputedSum, cart.Place("header:mapMode"), $"The map mode byte is 0x{value:X2}, SPC7110, and the ROM has {region.Length >> 20} MiB.");
        }
    }

    private static void CheckChipset(CartView cart, FindingLog log)
    {
        var chipset = SnesHeader.Chipset(cart["chipset"]);
        var kind = chipset & 0x0F;
        bool? needsRam = kind switch
        {
            0 or 3 => false,
            1 or 2 or 4 or 5 or 9 or 0xA => true,
            _ => null,
        };
        var hasRam = cart["saveRam"] != "0" || (kind >= 3 && cart["expansionRam"] is not null and not "0");
        if (needsRam is { } needs && needs != hasRam)
        {
            log.Add(SnesFindings.ChipsetRam, cart.Place("header:chipset"), $"The chipset 0x{chipset:X2} ({cart["chipset"]}) is one {(needs ? "with" : "without")} RAM, and saveRam is {cart["saveRam"]}.");
        }
    }

    private static void CheckCodes(CartView cart, FindingLog log)
    {
        foreach (var field in Coded)
        {
            if (cart[field] is { } text && (text.StartsWith("0x", StringComparison.Ordinal) || text.StartsWith("raw ", StringComparison.Ordinal)))
            {
                log.Add(SnesFindings.UndocumentedValue, cart.Place("header:" + field), $"The header's `{field}` is {text}.");
            }
        }
    }

    private static void CheckExtended(CartView cart, FindingLog log)
    {
        var early = cart["makerCode"] is null && IsCustom(cart) && Raw(cart, "title") is [.., 0];
        if (cart["developerId"] == SnesValues.Extended)
        {
            CheckCode(cart, "makerCode", log);
            CheckCode(cart, "gameCode", log);
        }
        else if (cart["chipsetSubtype"] is not null && !early)
        {
            log.Add(SnesFindings.ExtendedIgnored, cart.Place("header:developerId"), $"The header has extended fields, and its developer ID is {cart["developerId"]}.");
        }
    }

    private static void CheckCode(CartView cart, string field, FindingLog log)
    {
        if (!Raw(cart, field).Any(static value => char.IsAsciiLetterOrDigit((char)value)))
        {
            log.Add(SnesFindings.ExtendedIncomplete, cart.Place("header:" + field), $"The developer ID is 0x33, and `{field}` is not set.");
        }
    }

    private static void CheckGameCode(CartView cart, FindingLog log)
    {
        var country = SnesCountry.All.FirstOrDefault(row => row.Name == cart["region"]);
        if (country?.Letter is { } letter && Raw(cart, "gameCode") is [.., var last]
            && SnesCountry.All.FirstOrDefault(row => row.Letter == (char)last) is { } other && other != country)
        {
            log.Add(SnesFindings.GameCodeRegion, cart.Place("header:region"),
                $"The game code {cart["gameCode"]} ends with {other.Letter}, {other.Name}; the region is {country.Name}, {letter}.");
        }
    }

    private static bool IsCustom(CartView cart) => SnesValues.IsCustom(SnesHeader.Chipset(cart["chipset"]));

    private static ImmutableArray<byte> Raw(CartView cart, string field)
    {
        foreach (var header in cart.Headers)
        {
            if (header.Entries.FirstOrDefault(entry => entry.Field.Name == field) is { } entry)
            {
                return entry.Raw;
            }
        }

        return [];
    }
}
