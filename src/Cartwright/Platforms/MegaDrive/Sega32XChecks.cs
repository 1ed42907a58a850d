using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Checks of a 32X ROM beyond those of the Mega Drive.</summary>
/// <param name="view">The ROM.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class Sega32XChecks(CartView view, FindingLog log)
{
    private const uint AddressLines = 0xFFFFFF;
    private const int EntryAt = 4;
    private const int OtherVectors = 8;
    private const int StartUpLength = ModuleHeader.UserCode - ModuleHeader.StartUp;

    private readonly MegaDriveCart _cart = new(view);

    public void Run()
    {
        CheckVectors();
        CheckStartUp();
        CheckModule();
        if (_cart.Region.CoveringSegment(ModuleHeader.UserCode, 1) is null)
        {
            log.Add(Sega32XFindings.NoUserCode, _cart.PlaceOf(ModuleHeader.UserCode), $"No program covers 0x{ModuleHeader.UserCode:X6}.");
        }

        if (_cart.Text("systemType").Trim() != Sega32XPlatform.SystemType && SystemTypes.OpensLock(_cart.Raw("systemType")))
        {
            log.Add(Sega32XFindings.OtherSystem, _cart.Place("systemType"), $"The system type is `{_cart.Text("systemType")}`.", Sega32XPlatform.SystemType);
        }
    }

    private void CheckVectors()
    {
        var entry = Vector(EntryAt);
        if (entry != ModuleHeader.StartUp)
        {
            log.Add(Sega32XFindings.EntryElsewhere, _cart.PlaceOf(EntryAt), $"The 68000 starts at ${entry:X6}.", $"${ModuleHeader.StartUp:X6}");
        }

        for (var at = OtherVectors; at < MegaDriveHeader.Start; at += 4)
        {
            // Numbers in reserve are often 0.
            if (Vector(at) is not (0 or ModuleHeader.StartUp or (>= ModuleHeader.JumpTable and < ModuleHeader.Start)))
            {
                log.Add(Sega32XFindings.VectorElsewhere, _cart.PlaceOf(at), $"The vector at 0x{at:X6} leads to ${Vector(at):X6}.");
                return;
            }
        }
    }

    private void CheckStartUp()
    {
        var block = _cart.Bytes[ModuleHeader.StartUp..ModuleHeader.UserCode];
        var place = _cart.PlaceOf(ModuleHeader.StartUp);
        if (!block.ContainsAnyExcept((byte)0, _cart.Region.Fill))
        {
            log.Add(Sega32XFindings.NoStartUp, place, $"0x{ModuleHeader.StartUp:X6}-0x{ModuleHeader.UserCode - 1:X6} are blank.");
            return;
        }

        var programs = new HashSet<string>(StringComparer.Ordinal);
        var covered = 0L;
        foreach (var segment in _cart.Region.Coverage)
        {
            var bytes = Math.Min(segment.End, ModuleHeader.UserCode) - Math.Max(segment.Offset, ModuleHeader.StartUp);
            if (bytes > 0)
            {
                covered += bytes;
                programs.Add(segment.Program);
            }
        }

        if (covered < StartUpLength)
        {
            log.Add(Sega32XFindings.StartUpBroken, place, $"No program covers {ByteSize.Describe(StartUpLength - covered)} of the block's {ByteSize.Words(StartUpLength)}.");
        }
        else if (programs.Count > 1)
        {
            log.Add(Sega32XFindings.StartUpBroken, place, $"The block is made of pieces of {string.Join(", ", programs.Order(StringComparer.Ordinal))}.");
        }
    }

    private void CheckModule()
    {
        if (!_cart.Bytes[ModuleHeader.Start..ModuleHeader.StartUp].ContainsAnyExcept((byte)0, _cart.Region.Fill))
        {
            log.Add(Sega32XFindings.NoModule, _cart.Place("moduleName"), $"0x{ModuleHeader.Start:X6}-0x{ModuleHeader.StartUp - 1:X6} are blank.");
            return;
        }

        if (view["moduleName"]!.Trim() != ModuleHeader.UsualName)
        {
            log.Add(Sega32XFindings.ModuleName, _cart.Place("moduleName"), $"The module's name is `{view["moduleName"]}`.", ModuleHeader.UsualName);
        }

        var (source, length) = (Module("codeSource"), Module("codeLength"));
        if ((long)source + length > _cart.Length)
        {
            log.Add(Sega32XFindings.CodeOutside, _cart.Place("codeSource"), string.Create(CultureInfo.InvariantCulture,
                $"The SH-2 program is 0x{source:X6}-0x{(long)source + length - 1:X6}, and the ROM has {ByteSize.Describe(_cart.Length)}."));
        }

        CheckStart("masterStart");
        CheckStart("slaveStart");
    }

    private void CheckStart(string field)
    {
        var start = Module(field);
        var inRom = (long)start - Sega32XAddresses.ForSh2;
        if (start % 2 != 0 || (inRom >= _cart.Length && inRom < MegaDriveAddresses.WindowEnd))
        {
            log.Add(Sega32XFindings.StartOutside, _cart.Place(field), $"`{field}` is ${start:X8}, {(start % 2 != 0 ? "an odd address" : "behind the end of the ROM")}.");
        }
    }

    private uint Vector(int at) => BinaryPrimitives.ReadUInt32BigEndian(_cart.Bytes[at..]) & AddressLines;

    private uint Module(string field) => BinaryPrimitives.ReadUInt32BigEndian(view.Headers.First(static header => header.Table.Anchor.Offset == ModuleHeader.Start).Entries.First(entry => entry.Field.Name == field).Raw.AsSpan());
}
