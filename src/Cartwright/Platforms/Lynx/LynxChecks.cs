using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Lynx;

/// <summary>The checks of a Lynx ROM: what can be seen of its start without decrypting it, and the directory where its place is known.</summary>
internal sealed class LynxChecks(CartView cart, FindingLog log)
{
    private const int RamEnd = 0x10000;

    private readonly RegionImage _rom = cart.Rom[LynxHeader.Region]!;

    public void Run()
    {
        CheckBoot();
        if (LynxBoot.Directory(_rom.Bytes.Span) is { } directory)
        {
            CheckDirectory(directory);
        }

        if (LynxHeader.IsBanked(_rom.Length) && cart["audin"] == "false" && cart["bank1BlockSize"] == "0")
        {
            log.Add(LynxFindings.BankNotSwitched, cart.Place("header:audin"), $"The ROM has {ByteSize.Describe(_rom.Length)}, and `audin` is false.");
        }
    }

    private void CheckBoot()
    {
        var count = _rom.Bytes.Span[0];
        var frame = Math.Min(LynxBoot.FrameLength(count), _rom.Length);
        if (_rom.CoveringSegment(0, 1) is null || count == 0 || !_rom.Bytes.Span[..frame].ContainsAnyExcept(count))
        {
            log.Add(LynxFindings.NoBootHeader, PlaceOf(0), string.Create(CultureInfo.InvariantCulture, $"The ROM begins with 0x{count:X2}, and nothing that could be decrypted follows."));
        }
        else if (count < LynxBoot.SmallestCount)
        {
            log.Add(LynxFindings.FrameCount, PlaceOf(0), string.Create(CultureInfo.InvariantCulture, $"The ROM begins with 0x{count:X2}."), "0xF8 to 0xFF");
        }
        else if (FirstGap() is var gap && gap < frame)
        {
            log.Add(LynxFindings.FrameCut, PlaceOf(0), string.Create(CultureInfo.InvariantCulture,
                $"The first byte, 0x{count:X2}, asks for {ByteSize.Describe(frame)}, and the program ends at {ByteSize.Describe(gap)}."));
        }
    }

    private void CheckDirectory(int directory)
    {
        if (directory + LynxEntry.Length > FirstGap())
        {
            log.Add(LynxFindings.EntryNowhere, PlaceOf(0), string.Create(CultureInfo.InvariantCulture, $"No program covers all of the first directory entry, which begins at 0x{directory:X6}."));
            return;
        }

        var size = LynxBlocks.SizeFor(_rom.Length);
        var entry = LynxEntry.Read(_rom.Bytes.Span[directory..]);
        var position = entry.Position(size);
        var words = string.Create(CultureInfo.InvariantCulture,
            $"The first entry, at 0x{directory:X6}, names block {entry.Block:X2} offset {entry.Offset:X4}, {ByteSize.Describe(entry.FileLength)} to be loaded at ${entry.Load:X4}");
        if (entry.Offset >= size)
        {
            log.Add(LynxFindings.OtherBlocks, PlaceOf(directory), string.Create(CultureInfo.InvariantCulture, $"{words}, and a block has {size} bytes."));
        }
        else if (entry.FileLength == 0 || position + entry.FileLength > _rom.Length || !IsCovered(position) || !IsCovered(position + entry.FileLength - 1))
        {
            log.Add(LynxFindings.EntryNowhere, PlaceOf(directory), string.Create(CultureInfo.InvariantCulture, $"{words}; that is 0x{position:X6} of the ROM, and no program covers all of it."));
        }

        if (entry.Load + entry.FileLength > RamEnd)
        {
            log.Add(LynxFindings.LoadsBeyond, PlaceOf(directory), words + ".");
        }
    }

    // Where the programs that begin at offset 0 first leave a gap.
    private long FirstGap()
    {
        var end = 0L;
        foreach (var segment in _rom.Coverage)
        {
            if (segment.Offset > end)
            {
                break;
            }

            end = segment.End;
        }

        return end;
    }

    private bool IsCovered(int offset) => _rom.CoveringSegment(offset, 1) is not null;

    private SourcePlace PlaceOf(int offset) => _rom.CoveringSegment(offset, 1)?.Place ?? cart.Place("programs");
}
