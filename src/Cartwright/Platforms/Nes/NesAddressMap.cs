using System.Globalization;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nes;

/// <summary>CPU addresses of a cart. CHR has none: it is not on the CPU's bus.</summary>
/// <param name="mapper">The mapper's row; null when the table has none.</param>
internal sealed class NesAddressMap(NesMapper? mapper) : AddressMap
{
    private const long Window = 0x8000;
    private const long End = 0x10000;

    /// <inheritdoc/>
    public override string Forms => "bank:address such as 07:C000, or a plain CPU address such as $C000 where no banks are switched; CHR has no CPU address and takes an offset";

    /// <inheritdoc/>
    public override int BankOf(string region) => region == "prg" ? (int)(mapper?.PrgBank ?? 0) : 0;

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        // Program files hold the bank above the 16 bits of the address; without one it is a plain address.
        var (bank, at) = address is { Bank: null, Address: >= End } ? (address.Address >> 16, address.Address & 0xFFFF) : (address.Bank, address.Address);
        if (at is < Window or >= End)
        {
            return AddressPlace.Nowhere($"${at:X4} is {Outside(at)}");
        }

        var size = statedSize("prg");
        return mapper switch
        {
            null => AddressPlace.Nowhere("the mapper is not in the table, so that its bank size is not known: write `offset` instead of an address"),
            { PrgBank: 0 } => Unbanked(bank, at, size),
            _ => bank is { } number ? InBank(number, at, size, mapper) : Plain(at, size, mapper),
        };
    }

    // 16 KiB are seen twice, so that both halves of the window lead to them.
    private AddressPlace Unbanked(long? bank, long at, long? size)
    {
        var span = size is > 0 and { } stated ? Math.Min(stated, End - Window) : End - Window;
        return bank is > 0
            ? AddressPlace.Nowhere($"the mapper {mapper!.Name} switches no banks, so that there is no bank {bank:X2}")
            : In((at - Window) % span, span);
    }

    private static AddressPlace InBank(long bank, long at, long? size, NesMapper mapper)
    {
        var last = size / mapper.PrgBank - 1;
        // The bank a fixed window shows is the last but so many.
        var seen = last - ((End - 1 - at) / mapper.PrgBank);
        var banks = mapper.PrgLargest / mapper.PrgBank;
        return bank >= banks
                ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"the mapper {mapper.Name} has the banks 00 to {banks - 1:X2}"))
            : at >= End - mapper.FixedTop && seen is { } fixedBank && fixedBank >= 0 && bank != fixedBank
                ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"with the mapper {mapper.Name} ${at:X4} always shows bank {fixedBank:X2}, never bank {bank:X2}"))
            : mapper.FixedFirst && at < Window + mapper.PrgBank && bank != 0
                ? AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"with the mapper {mapper.Name} ${at:X4} always shows bank 00, never bank {bank:X2}"))
            : In((bank * mapper.PrgBank) + (at % mapper.PrgBank), mapper.PrgBank);
    }

    private static AddressPlace Plain(long at, long? size, NesMapper mapper)
    {
        var example = string.Create(CultureInfo.InvariantCulture, $"write bank:address such as 03:{at:X4}");
        if (at >= End - mapper.SureTop)
        {
            return size is { } stated && stated >= End - at
                ? new AddressPlace("prg", stated - (End - at), End - at, null)
                : AddressPlace.Nowhere($"${at:X4} is in the last bank, and where that is follows from the size of `prg`: state it, such as `\"prg\": {{ \"size\": \"{ByteSize.Format(mapper.PrgMax)}\" }}`, or {example}");
        }

        // Bank 0 is the bank program files mean by a number without one; from $C000 on it could as well be the last one.
        return at < 0xC000 || mapper.PrgBank >= End - Window
            ? In(at % mapper.PrgBank, mapper.PrgBank)
            : AddressPlace.Nowhere($"${at:X4} is in a window the mapper {mapper.Name} switches: {example}");
    }

    private static AddressPlace In(long offset, long span) => AddressPlace.In("prg", offset, span - (offset % span));

    private static string Outside(long at) => at switch
    {
        < 0x2000 => "work RAM of the console",
        < 0x4020 => "a register of the console",
        < 0x6000 => "expansion space, not PRG",
        < Window => "RAM of the cartridge, not PRG",
        _ => "more than the CPU's 16 bits",
    };
}
