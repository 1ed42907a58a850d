using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The checks of a Nintendo 64 ROM that need more than one field.</summary>
/// <param name="cart">The finished ROM.</param>
/// <param name="chips">The lock chips there are.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class N64Checks(CartView cart, ImmutableArray<BootChip> chips, FindingLog log)
{
    private const string Variant = "header:bootChip";
    private const int ElfStep = 0x100;

    // Without and with the expansion: from memory.
    private const uint RamEnd = 0x00800000;
    private const uint RamMask = 0x1FFFFFFF;

    private readonly BootChip? _stated = chips.FirstOrDefault(chip => chip.Is(cart.Layout.Variant));

    private ReadOnlySpan<byte> Rom => cart.Bytes(N64Header.Region);

    public void Run()
    {
        var code = CheckBootCode();
        if (code is { IsStock: false })
        {
            CheckElf();
        }
        else if (code is not null)
        {
            CheckProgram();
            CheckEntry(code.Chip);
        }

        new N64HeaderChecks(cart, _stated, log).Run();
    }

    // What starts the program; null when nothing does, which has been said.
    private BootCode? CheckBootCode()
    {
        var region = cart.Rom[N64Header.Region]!;
        var bytes = Rom[Math.Min(BootCode.Start, Rom.Length)..Math.Min(BootCode.End, Rom.Length)];
        if (bytes.Length < BootCode.Length || Blank.Is(bytes, region.Fill))
        {
            log.Add(N64Findings.NoBootCode, cart.Place("programs"), "There is nothing at 0x000040-0x000FFF.");
            return null;
        }

        var code = BootCode.Identify(bytes, chips);
        if (code is null)
        {
            var crc = string.Create(CultureInfo.InvariantCulture, $"The boot code's CRC-32 is 0x{System.IO.Hashing.Crc32.HashToUInt32(bytes):X8}, and the console's check of it gives no chip's value");
            log.Add(cart.Layout.Variant == N64Layouts.None ? N64Findings.OnlyLoaders : N64Findings.UnknownBootCode, cart.Place(Variant), crc + ".");
            return null;
        }

        CheckChip(code);
        return code;
    }

    private void CheckChip(BootCode code)
    {
        var kind = (code.IsStock ? "the stock boot code of the " : "an open boot code that starts with the ") + code.Chip.Name;
        if (_stated is null ? code.IsStock : _stated != code.Chip)
        {
            log.Add(N64Findings.OtherChip, cart.Place(Variant), $"`bootChip` is `{cart.Layout.Variant}`, and this is {kind}.");
        }
        else if (!code.IsStock)
        {
            log.Add(N64Findings.WordsUnused, cart.Place(Variant), $"This is {kind}; the header holds {Convert.ToHexString(Rom.Slice(0x10, 8))}.");
        }
    }

    private void CheckProgram()
    {
        if (cart.Rom[N64Header.Region]!.CoveringSegment(CheckWords.Start, 4) is null)
        {
            log.Add(N64Findings.NoProgram, cart.Place("programs"), "No program covers 0x001000.");
        }

        if (Rom.Length < CheckWords.End && _stated is { } chip)
        {
            var stored = BinaryPrimitives.ReadUInt64BigEndian(Rom[0x10..]);
            var fitting = CheckWords.FittingFill(Rom, chip, stored);
            log.Add(N64Findings.TooShort, cart.Place("rom"), $"The image has {ByteSize.Describe(Rom.Length)}, and 0x{CheckWords.End:X6} are summed. "
                + (fitting is null ? "Its check words fit no usual fill." : $"Its check words fit when it is {fitting}."));
        }
    }

    private void CheckEntry(BootChip chip)
    {
        var entry = BinaryPrimitives.ReadUInt32BigEndian(Rom[N64Header.EntryAt..]);
        var real = entry - chip.EntryShift;
        if (chip.FixedEntry is { } settled)
        {
            if (entry != settled)
            {
                log.Add(N64Findings.EntryIgnored, cart.Place("header:entry"), string.Create(CultureInfo.InvariantCulture, $"The header holds ${entry:X8}."));
            }
        }
        else if (real is < 0x80000000 or > 0xBFFFFFFF || (real & RamMask) >= RamEnd || real % 4 != 0)
        {
            log.Add(N64Findings.EntryOutside, cart.Place("header:entry"), string.Create(CultureInfo.InvariantCulture,
                $"The header holds ${entry:X8}, which the boot code of the {chip.Name} takes as ${real:X8}."));
        }
    }

    private void CheckElf()
    {
        for (var at = BootCode.End; at + 4 <= Rom.Length; at += ElfStep)
        {
            if (Rom[at..].StartsWith("\u007FELF"u8))
            {
                return;
            }
        }

        log.Add(N64Findings.NoElf, cart.Place("programs"), "No ELF file begins at a multiple of 256 bytes from 0x001000 on.");
    }
}
