using Cartwright.Roms;

namespace Cartwright.Platforms.Lynx;

/// <summary>The cartridge is no part of the processor's map: a place is a block and an offset in it.</summary>
/// <param name="blockSize">Bytes of a block; null where they follow from the ROM's size.</param>
public sealed class LynxAddresses(int? blockSize) : AddressMap
{
    /// <inheritdoc/>
    public override string Forms => "block:offset such as 12:0034, both hexadecimal; the cartridge has no addresses of the processor's";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize)
    {
        if (address.Bank is not { } block)
        {
            return AddressPlace.Nowhere("the cartridge is read block by block and lies at no address; name a block and an offset, or state `offset`");
        }

        if (blockSize is null && statedSize(LynxHeader.Region) is null)
        {
            return AddressPlace.Nowhere("where a block lies depends on its size; state `rom.size` or `header.blockSize`");
        }

        var size = blockSize ?? LynxBlocks.SizeFor(statedSize(LynxHeader.Region)!.Value);
        var last = (size == LynxBlocks.Largest ? 2 * LynxBlocks.Count : LynxBlocks.Count) - 1;
        return block > last ? AddressPlace.Nowhere(FormattableString.Invariant($"the last block is {last:X2}"))
            : address.Address >= size ? AddressPlace.Nowhere(FormattableString.Invariant($"a block has {size} bytes, and its last offset is {size - 1:X4}"))
            : AddressPlace.In(LynxHeader.Region, (block * size) + address.Address, size - address.Address);
    }
}
