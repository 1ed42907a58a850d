using System.Globalization;
using Cartwright.Findings;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>The checks of a WonderSwan ROM that need more than one field.</summary>
internal sealed class SwanChecks(CartView cart, FindingLog log)
{
    private const int SmallestWithCode = 128 << 10;
    private const byte UnclearSave = 0x01;
    private const int SmallMapperReaches = 16 << 20;

    public void Run()
    {
        var rom = cart.Bytes(SwanHeader.Region);
        var footer = rom[^SwanHeader.Length..];
        CheckJump(footer, rom.Length);
        if ((footer[5] & 0x0F) != 0)
        {
            Add(SwanFindings.Refused, "maintenance", string.Create(CultureInfo.InvariantCulture, $"The maintenance byte is 0x{footer[5]:X2}."));
        }

        if (rom.Length < SmallestWithCode)
        {
            Add(SwanFindings.NoSizeCode, "romSize", $"The ROM has {Manifests.ByteSize.Describe(rom.Length)}, and the code written stands for 128 KiB.");
        }

        if (footer[0x0B] == UnclearSave)
        {
            Add(SwanFindings.UnclearSave, "save", "The save code is 01.");
        }

        if (footer[0x0D] == 0 && rom.Length > SmallMapperReaches)
        {
            Add(SwanFindings.BeyondMapper, "mapper", $"The ROM has {Manifests.ByteSize.Describe(rom.Length)}, and mapper 2001 reaches {Manifests.ByteSize.Describe(SmallMapperReaches)}.");
        }

        if (!MasterSystem.Bcd.TryRead(footer[8], out _))
        {
            Add(SwanFindings.GameIdForm, "gameId", string.Create(CultureInfo.InvariantCulture, $"The game number is 0x{footer[8]:X2}."));
        }
    }

    private void CheckJump(ReadOnlySpan<byte> footer, int length)
    {
        if (SwanJump.Target(footer) is not { } target)
        {
            Add(SwanFindings.NoJump, "entry", $"The footer begins with {Convert.ToHexString(footer[..5])}.");
        }
        else if (!SwanJump.IsInside(target, length) || cart.Rom[SwanHeader.Region]!.CoveringSegment(length - SwanAddresses.WindowEnd + target, 1) is null)
        {
            Add(SwanFindings.JumpNowhere, "entry", string.Create(CultureInfo.InvariantCulture,
                $"The footer jumps to ${target:X5}, and programs can lie from ${SwanJump.Lowest(length):X5} to $FFFEF; none is there."));
        }
    }

    private void Add(FindingRule rule, string field, string message) => log.Add(rule, cart.Place("header:" + field), message);
}
