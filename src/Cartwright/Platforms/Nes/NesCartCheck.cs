using System.Globalization;
using System.Numerics;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>Checks of a finished cart that need more than one header field.</summary>
/// <param name="cart">The cart.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class NesCartCheck(CartView cart, FindingLog log)
{
    private readonly int _number = Number(cart["mapper"], MapperText.Instance);
    private readonly int _submapper = Number(cart["submapper"], PlainNumber.InDecimal);

    /// <summary>Runs them all.</summary>
    public void Run()
    {
        if (NesMappers.Find(_number, _submapper, cart.Rom.LengthOf("chr")) is { } mapper)
        {
            NesVectorCheck.Check(cart.Rom["prg"]!, mapper, cart.Place("programs"), log);
            CheckBoard(mapper);
        }
        else if (cart["mapper"] is { } text)
        {
            log.Add(NesFindings.UnknownMapper, cart.Place("header:mapper"), $"Nothing is known here of the mapper {text}.");
        }

        CheckHeader();
    }

    private void CheckBoard(NesMapper mapper)
    {
        CheckChr(mapper);
        CheckConflicts(mapper);
        var prg = cart.Rom.LengthOf("prg");
        if (prg > mapper.PrgMax)
        {
            log.Add(NesFindings.Oversize, cart.Place("prg:size"), $"PRG has {ByteSize.Describe(prg)}, and customary boards with the mapper {mapper.Name} take {ByteSize.Words(mapper.PrgMax)}.");
        }

        if (mapper.KeepsOwnSave && Is("battery", "true"))
        {
            log.Add(NesFindings.SelfFlash, cart.Place("header:battery"), $"With the mapper {mapper.Name} and the battery flag the console rewrites sectors of PRG, mostly of 4 KiB.");
        }

        // The MMC6 is the submapper of mapper 4 that has RAM of its own.
        if (Is("battery", "true") && !HasRam("prgSaveRam") && !HasRam("chrSaveRam") && !mapper.KeepsOwnSave && !(_number == 4 && _submapper == 1))
        {
            log.Add(NesFindings.NothingKept, cart.Place("header:battery"), $"The battery flag is set, and with the mapper {mapper.Name} there is nothing that keeps its contents.");
        }
    }

    private void CheckChr(NesMapper mapper)
    {
        var chr = cart.Rom["chr"];
        if (chr is not null && !mapper.TakesChrRom)
        {
            log.Add(NesFindings.ChrUnexpected, cart.Place("chr"), $"There are {ByteSize.Words(chr.Length)} of CHR, and boards with the mapper {mapper.Name} have {(mapper.TakesChrRam ? "CHR RAM" : "no CHR chip")}.");
        }
        else if (chr is null && mapper.Chr is not ChrKind.None && (!mapper.TakesChrRam || !(HasRam("chrRam") || HasRam("chrSaveRam"))))
        {
            var ram = HasRam("chrRam") || HasRam("chrSaveRam");
            log.Add(NesFindings.ChrMissing, cart.Place("chr"), $"There is no CHR ROM{(ram ? "" : " and no CHR RAM")}, and boards with the mapper {mapper.Name} have {(mapper.TakesChrRam ? "one of the two" : "CHR ROM")}.");
        }
    }

    private void CheckConflicts(NesMapper mapper)
    {
        var told = NesSubmappers.Of(_number).Any(static row => row.Meaning.StartsWith("bus conflicts", StringComparison.Ordinal));
        var some = mapper.Conflicts switch
        {
            BusConflicts.None => null,
            BusConflicts.UnlessSelfFlash => Is("battery", "true") ? null : "has",
            _ when told && _submapper == 1 => null,
            BusConflicts.SomeBoards when _submapper != 2 => "has on some boards",
            _ => "has",
        };
        if (some is not null)
        {
            log.Add(NesFindings.Conflicts, cart.Place("header:mapper"), $"The mapper {mapper.Name} {some} bus conflicts.",
                remedy: NesFindings.Conflicts.Remedy + (told && _submapper == 0 ? " `submapper: 2` tells loaders to show them, `submapper: 1` that the board has none." : ""));
        }
    }

    private void CheckHeader()
    {
        var submappers = NesSubmappers.Of(_number);
        if (!submappers.IsEmpty && !submappers.Any(row => row.Number == _submapper))
        {
            log.Add(NesFindings.Submapper, cart.Place("header:submapper"), $"The mapper {cart["mapper"]} has no submapper {_submapper.ToString(CultureInfo.InvariantCulture)}.",
                string.Join(", ", submappers.Select(static row => string.Create(CultureInfo.InvariantCulture, $"{row.Number} ({row.Meaning})"))));
        }

        if (Is("trainer", "true"))
        {
            log.Add(NesFindings.Trainer, cart.Place("header:trainer"), "`trainer` is true.");
        }

        if (cart.Headers.SelectMany(static header => header.Entries).Any(static entry => entry is { Field.Name: "mirroring", Origin: EntryOrigin.Default }))
        {
            log.Add(NesFindings.MirroringUnsaid, cart.Place("header"), $"`mirroring` is not stated and was taken as `{cart["mirroring"]}`.");
        }

        if ((cart["miscellaneousRoms"] ?? "0") != "0" || Is("consoleType", "playchoice-10"))
        {
            log.Add(NesFindings.FurtherRoms, cart.Place("header"), "The header claims further ROMs behind CHR, such as the PlayChoice-10's 8 KiB of hints, and the exchange file ends with CHR.");
        }

        foreach (var entry in cart.Headers.SelectMany(static header => header.Entries))
        {
            CheckEntry(entry);
        }

        CheckOddSize("prg");
        CheckOddSize("chr");
    }

    private void CheckEntry(HeaderEntry entry)
    {
        var place = cart.Place("header:" + entry.Field.Name);
        if (entry.Field.Name.StartsWith("reserved", StringComparison.Ordinal) && entry.Text.AsSpan(entry.Text.StartsWith("0x", StringComparison.Ordinal) ? 2 : 0).ContainsAnyExcept('0'))
        {
            log.Add(NesFindings.NotZero, place, $"`{entry.Field.Name}` is {entry.Text}.");
        }

        if (entry.Field.Name is "prgSize" or "chrSize" && entry.Text.StartsWith("raw ", StringComparison.Ordinal))
        {
            log.Add(NesFindings.NeedlessExponent, place, $"`{entry.Field.Name}` is {entry.Text}.");
        }
    }

    private void CheckOddSize(string region)
    {
        var length = cart.Rom.LengthOf(region);
        if (length > 0 && !BitOperations.IsPow2(length))
        {
            log.Add(NesFindings.OddSize, cart.Place(region + ":size"), $"The region `{region}` has {ByteSize.Describe(length)}.");
        }
    }

    private bool Is(string field, string word) => cart[field] == word;

    private bool HasRam(string field) => cart[field] is not (null or "0");

    private static int Number(string? text, ValueText form) => text is not null && form.TryParse(text, out var number) ? (int)number : 0;
}
