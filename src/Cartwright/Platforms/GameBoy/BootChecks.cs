using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoy;

/// <summary>Checks of what the console does first: bitmap, header checksum, entry.</summary>
internal static class BootChecks
{
    private const byte Nop = 0x00;
    private const byte Jump = 0xC3;
    private const byte JumpNear = 0x18;
    private const byte DisableInterrupts = 0xF3;
    private const int EntryLength = 4;

    public static void Run(GameBoyCart cart)
    {
        if (cart.BootWindow > 0)
        {
            CheckMenu(cart);
            return;
        }

        CheckEntry(cart);
        CheckBitmap(cart);
        CheckLatch(cart);
    }

    private static void CheckEntry(GameBoyCart cart)
    {
        var entry = cart.Field("entry")!;
        var code = cart.Header(0)[..EntryLength];
        if (!cart.Covered(GameBoyHeader.Start, EntryLength) && entry.Origin != EntryOrigin.Manifest)
        {
            cart.Add(GameBoyFindings.NoEntry, "entry", "No program covers $0100-$0103, and `entry` is not stated.");
        }
        else if (!code.ContainsAnyExcept((byte)0x00))
        {
            cart.Add(GameBoyFindings.EmptyEntry, "entry", "$0100-$0103 hold four zero bytes.");
        }
        else if (!code.ContainsAnyExcept((byte)0xFF))
        {
            cart.Add(GameBoyFindings.FilledEntry, "entry", "$0100-$0103 hold FF FF FF FF.");
        }
        else if (Target(code) is { } target && Nowhere(cart, target) is { } problem)
        {
            cart.Add(GameBoyFindings.EntryNowhere, "entry", string.Create(CultureInfo.InvariantCulture, $"The code at $0100 jumps to ${target:X4}, and {problem}."));
        }
    }

    private static string? Nowhere(GameBoyCart cart, int target) =>
        target >= GameBoyHeader.Window ? "that is not in the ROM"
        : !cart.Covered(target, 1) ? "no program is there"
        : null;

    /// <summary>The address the entry's jump goes to; null when it is other code, whose way cannot be followed.</summary>
    internal static int? Target(ReadOnlySpan<byte> entry)
    {
        var skipped = entry.IndexOfAnyExcept(Nop, DisableInterrupts);
        var code = entry[Math.Max(skipped, 0)..];
        return code switch
        {
            [Jump, var low, var high, ..] => low | (high << 8),
            [JumpNear, var step, ..] => GameBoyHeader.Start + skipped + 2 + (sbyte)step,
            _ => null,
        };
    }

    private static void CheckBitmap(GameBoyCart cart)
    {
        var entry = cart.Field("bitmap")!;
        var bytes = entry.Raw.AsSpan();
        if (BootBitmap.IsRight(bytes))
        {
            return;
        }

        var right = BootBitmap.RightBytes(bytes);
        var differs = string.Create(CultureInfo.InvariantCulture, $"The boot bitmap at $0104 first differs at ${entry.Offset + right:X4} (byte {right + 1} of 48): 0x{bytes[right]:X2} instead of 0x{BootBitmap.Bytes[right]:X2}");
        var half = right >= BootBitmap.ComparedByColor;
        if (entry.Origin == EntryOrigin.Manifest && bytes.SequenceEqual(cart.Before(entry.Offset, entry.Raw.Length)))
        {
            cart.Add(GameBoyFindings.BitmapKept, "bitmap", $"{differs}, and is kept as stated; {(half ? "colour models start, the first models do not" : "no model that compares it starts")}.");
        }
        else if (half)
        {
            cart.Add(GameBoyFindings.BitmapHalfRight, "bitmap", $"{differs}; the colour models do not look so far, the first models do.");
        }
        else
        {
            cart.Add(GameBoyFindings.BitmapWrong, "bitmap", differs + ".");
        }
    }

    private static void CheckMenu(GameBoyCart cart)
    {
        var missing = Missing(cart, cart.BootWindow);
        if (missing.Length > 0)
        {
            cart.Add(GameBoyFindings.MenuNotStarting, "cartridgeType", string.Create(CultureInfo.InvariantCulture,
                $"The last 32 KiB begin at 0x{cart.BootWindow:X6} ({cart.BootWindow}), and there is no {missing} at $0100-$014F of them."));
        }
    }

    // Without a controller, or with a latch, any 32 KiB may be what the console sees first.
    private static void CheckLatch(GameBoyCart cart)
    {
        if (cart.Rom.Length == GameBoyHeader.Window || cart.Type is not (CartridgeTypes.RomOnly or CartridgeTypes.LatchBoard))
        {
            return;
        }

        var gaps = new List<string>();
        for (var window = GameBoyHeader.Window; window < cart.Rom.Length; window += GameBoyHeader.Window)
        {
            if (Missing(cart, window) is { Length: > 0 } missing)
            {
                gaps.Add(string.Create(CultureInfo.InvariantCulture, $"the one at 0x{window:X6} has no {missing}"));
            }
        }

        if (cart.Type == CartridgeTypes.LatchBoard)
        {
            ReportGaps(cart, gaps);
        }
        else if (gaps.Count > 0)
        {
            cart.Add(GameBoyFindings.NeedsController, "cartridgeType",
                $"The ROM has {Manifests.ByteSize.Words(cart.Rom.Length)}, the cartridge type is `rom`, and not every 32 KiB bank starts by itself: {gaps[0]}.", Suggestions(cart.Rom.Length));
        }
        else
        {
            cart.Add(GameBoyFindings.LatchCart, "cartridgeType", $"The ROM has {Manifests.ByteSize.Words(cart.Rom.Length)} without a bank controller, and every 32 KiB bank has an entry and a whole header.");
        }
    }

    private static void ReportGaps(GameBoyCart cart, List<string> gaps)
    {
        if (gaps.Count > 0)
        {
            cart.Add(GameBoyFindings.LatchGap, "cartridgeType", string.Create(CultureInfo.InvariantCulture, $"{gaps.Count} of {cart.Rom.Length / GameBoyHeader.Window} banks of 32 KiB do not start: {gaps[0]}."));
        }
    }

    private static string Suggestions(long rom) => "one of " + string.Join(", ", CartridgeTypes.All
        .Where(type => type.Controller.Suggested && type.Controller.Limits.Any(limit => limit.Caution is null && limit.Holds(rom, 0)))
        .Select(static type => type.Name));

    // What a 32 KiB window lacks to start, in words; empty when it starts.
    private static string Missing(GameBoyCart cart, int window)
    {
        var header = cart.Header(window);
        var missing = new List<string>();
        if (!cart.Covered(window + GameBoyHeader.Start, EntryLength))
        {
            missing.Add("entry");
        }

        if (!BootBitmap.IsRight(header.Slice(BootBitmap.Offset, BootBitmap.Length)))
        {
            missing.Add("right boot bitmap");
        }

        if (!GameBoyChecksums.HeaderIsRight(header))
        {
            missing.Add("right header checksum");
        }

        return string.Join(", no ", missing);
    }
}
