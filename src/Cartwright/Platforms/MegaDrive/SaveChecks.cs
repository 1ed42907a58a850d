using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Checks of the save memory block against itself and against the ROM.</summary>
internal static class SaveChecks
{
    private const string Field = "saveMemory";

    /// <summary>Checks the block.</summary>
    public static void Check(MegaDriveCart cart, FindingLog log)
    {
        var block = cart.Raw(Field);
        if (SaveMemory.FromBlock(block) is not { } memory)
        {
            if (block.ContainsAnyExcept((byte)' ') && block.ContainsAnyExcept((byte)0))
            {
                log.Add(MegaDriveFindings.SaveBlockOff, cart.Place(Field), $"The save memory block is {Convert.ToHexString(block)}.");
            }

            return;
        }

        if (!memory.InSpace)
        {
            log.Add(MegaDriveFindings.SaveRange, cart.Place(Field), $"The block's range is {Range(memory)}.");
            return;
        }

        if (memory.OnLane != memory)
        {
            log.Add(MegaDriveFindings.SaveLane, cart.Place(Field),
                $"The block says {memory.Lane.ToString().ToLowerInvariant()} bytes and {Range(memory)}; on that lane it is {Range(memory.OnLane)}, {ByteSize.Words(memory.Size)}.");
        }

        CheckRoom(cart, memory, log);
    }

    private static void CheckRoom(MegaDriveCart cart, SaveMemory memory, FindingLog log)
    {
        if (memory.Kind == SaveKind.Flash)
        {
            var start = (int)Math.Min(memory.Start, cart.Length);
            var erased = !cart.Bytes[start..(int)Math.Min(memory.End + 1, cart.Length)].ContainsAnyExcept((byte)0xFF);
            log.Add(erased ? MegaDriveFindings.FlashSave : MegaDriveFindings.FlashSaveNotErased, cart.Place(Field),
                $"The game saves into flash at {Range(memory)}, {(erased ? "which is left erased" : "where the ROM holds something else than 0xFF")}.");
        }
        else if (memory.Kind != SaveKind.Eeprom && memory.Start < cart.Length)
        {
            log.Add(MegaDriveFindings.SaveOverRom, cart.Place(Field),
                $"Save memory is at {Range(memory)}, and the ROM reaches to ${cart.Length - 1:X6} ({ByteSize.Words(cart.Length)}).");
        }
    }

    private static string Range(SaveMemory memory) => string.Create(CultureInfo.InvariantCulture, $"${memory.Start:X6}-${memory.End:X6}");
}
