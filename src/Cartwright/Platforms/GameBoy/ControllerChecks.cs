using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Platforms.GameBoy;

/// <summary>Checks of cartridge type, ROM size and RAM size against each other.</summary>
internal static class ControllerChecks
{
    private const int OrMaskMark = 0xE1;
    private const int LatchMark = 0xD1;

    // From memory: how far the mask of such multicarts reaches.
    private const long OrMaskLimit = 4L << 20;

    private static readonly int[] HiddenBanks = [0x20, 0x40, 0x60];

    public static void Run(GameBoyCart cart)
    {
        if (CartridgeTypes.Find((byte)cart.Type) is not { } type)
        {
            cart.AddByte(GameBoyFindings.UnknownType, "cartridgeType", "no type has this number");
            return;
        }

        CheckLimits(cart, type);
        CheckRam(cart, type);
        CheckMarks(cart, type);
        CheckHabits(cart, type);
    }

    private static void CheckLimits(GameBoyCart cart, CartridgeType type)
    {
        // Without a controller the latch checks have the better words.
        var controller = type.Controller;
        var (rom, ram) = (cart.Rom.Length, type.Ram == RamKind.Chip ? cart.SaveRam : 0);
        if (controller.Limits.IsEmpty || (type.Code == CartridgeTypes.RomOnly && rom > GameBoyHeader.Window))
        {
            return;
        }

        if (controller.Limits.FirstOrDefault(limit => limit.Holds(rom, ram)) is { } holding)
        {
            if (holding.Caution is { } caution)
            {
                cart.Add(GameBoyFindings.UncertainLimit, "cartridgeType", $"{Amounts(rom, ram)}: {caution}.");
            }

            return;
        }

        var (mostRom, mostRam) = (controller.Limits.Max(static limit => limit.Rom), controller.Limits.Max(static limit => limit.Ram));
        var most = $"{Amounts(rom, ram)}; {controller.Name} shows at most {string.Join(", or ", controller.Limits.Select(static limit => Amounts(limit.Rom, limit.Ram)))}";
        if (controller.FromMemory)
        {
            cart.Add(GameBoyFindings.UncertainLimit, "cartridgeType", most + " (from memory).");
        }
        else if (rom > mostRom)
        {
            cart.Add(GameBoyFindings.RomTooLarge, "cartridgeType", most + ".");
        }
        else
        {
            cart.Add(ram > mostRam ? GameBoyFindings.RamTooLarge : GameBoyFindings.TooMuchTogether, "saveRam", most + ".");
        }
    }

    private static string Amounts(long rom, long? ram) => ram is > 0 ? $"{ByteSize.Words(rom)} of ROM with {ByteSize.Words(ram.Value)} of RAM" : $"{ByteSize.Words(rom)} of ROM";

    private static void CheckRam(GameBoyCart cart, CartridgeType type)
    {
        var stated = cart.SaveRam > 0;
        if (cart.SaveRam == GameBoyHeader.UnusedRamSize)
        {
            cart.Add(GameBoyFindings.UnusedRamCode, "saveRam", "The RAM size code is 01, which some lists call 2 KiB.");
        }

        var words = $"The cartridge type is `{type.Name}` and `saveRam` is `{(stated ? ByteSize.Format(cart.SaveRam) : "0")}`.";
        switch (type.Ram)
        {
            case RamKind.Chip when !stated:
                cart.Add(GameBoyFindings.NoRamSize, "saveRam", words);
                break;
            case RamKind.None when stated:
                cart.Add(GameBoyFindings.NoRamType, "saveRam", words);
                break;
            case RamKind.Inside when stated:
                cart.Add(GameBoyFindings.RamInside, "saveRam", words);
                break;
            case RamKind.Chip when !type.Battery:
                cart.Add(GameBoyFindings.NoBattery, "cartridgeType", words);
                break;
            default:
                break;
        }
    }

    private static void CheckMarks(GameBoyCart cart, CartridgeType type)
    {
        var destination = cart.Value("destination");
        if (type.Code == CartridgeTypes.LatchBoard && destination != LatchMark)
        {
            cart.AddByte(GameBoyFindings.LatchMark, "destination", "a latch board is known by 0xD1");
        }

        if (type.Code == CartridgeTypes.Mbc5RamBattery && destination == OrMaskMark && cart.Rom.Length > OrMaskLimit)
        {
            cart.Add(GameBoyFindings.UncertainLimit, "cartridgeType", $"{Amounts(cart.Rom.Length, null)}; the mask of an OR-mask multicart reaches {ByteSize.Words(OrMaskLimit)} (from memory).");
        }
    }

    private static void CheckHabits(GameBoyCart cart, CartridgeType type)
    {
        if (type.Controller == BankControllers.None && type.Ram == RamKind.Chip)
        {
            cart.Add(GameBoyFindings.RareType, "cartridgeType", $"The cartridge type is `{type.Name}`.");
        }

        if (type.Controller.SingleSpeed && cart.HasColor)
        {
            cart.Add(GameBoyFindings.SingleSpeed, "cartridgeType", $"The CGB flag is set, and the controller is {type.Controller.Name}.");
        }

        if (type.Controller == BankControllers.Mbc1)
        {
            CheckHiddenBanks(cart);
        }
    }

    private static void CheckHiddenBanks(GameBoyCart cart)
    {
        var used = HiddenBanks.Where(bank => IsUsed(cart, bank)).Select(static bank => string.Create(CultureInfo.InvariantCulture, $"${bank:X2}")).ToList();
        if (used.Count > 0)
        {
            cart.Add(GameBoyFindings.HiddenBanks, "cartridgeType", $"A program is in {(used.Count == 1 ? "bank" : "banks")} {string.Join(", ", used)}.");
        }
    }

    private static bool IsUsed(GameBoyCart cart, int bank)
    {
        var start = bank * GameBoyAddresses.BankSize;
        return start < cart.Rom.Length && cart.Covered(start, GameBoyAddresses.BankSize)
            && cart.Rom.Slice(start, GameBoyAddresses.BankSize).ContainsAnyExcept(cart.Image.Fill);
    }
}
