using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>How a board shows its ROM.</summary>
/// <param name="Name">The word the manifest uses.</param>
/// <param name="Sizes">The sizes of the ROM.</param>
/// <param name="Addresses">The addresses of the ROM.</param>
/// <param name="Windows">The runs of a bank, or of a ROM without banks, in the order of the ROM.</param>
/// <param name="Meaning">How the board is made.</param>
public sealed record CommodoreMapping(string Name, SizeRule Sizes, AddressMap Addresses, ImmutableArray<CrtWindow> Windows, string Meaning)
{
    /// <summary>The only region.</summary>
    public const string Region = "rom";

    /// <summary>Bytes a select of the C64 and a block of the VIC-20 show.</summary>
    public const int WindowSize = 0x2000;

    /// <summary>What the region holds, a few words.</summary>
    public string Holds { get; init; } = "program and data";

    /// <summary>Which end of a ROM that is not filled up the program lies at.</summary>
    public RegionAlign Align { get; init; } = RegionAlign.Start;

    /// <summary>The container's number for the board; 0 where the lines say everything.</summary>
    public int Hardware { get; init; }

    /// <summary>Levels of the lines at reset.</summary>
    public CrtLines Lines { get; init; }

    /// <summary>True where the board's registers can set other lines, so that nobody can say which are wrong.</summary>
    public bool HasOwnLines { get; init; }

    /// <summary>Size of the ROM in bytes at which the upper half of the banks is seen at $A000; null where none does that.</summary>
    public long? SplitSize { get; init; }

    /// <summary>Kind of the chips in the container's packets.</summary>
    public int ChipKind { get; init; }

    /// <summary>Offset of the header that starts the cartridge; null on boards where there is none.</summary>
    public int? Autostart { get; init; }

    /// <summary>Where the processor's own vectors lie, on boards that replace the KERNAL; null on others.</summary>
    public HeaderAnchor? Vectors { get; init; }

    /// <summary>Levels of the lines at reset for a ROM of a size.</summary>
    /// <param name="length">Bytes of the ROM.</param>
    public CrtLines LinesFor(long length) => length == SplitSize ? CrtLines.TwoWindows : Lines;

    /// <summary>The packet of one window of a bank.</summary>
    /// <param name="bank">The bank.</param>
    /// <param name="window">The window.</param>
    /// <param name="length">Bytes of the whole ROM.</param>
    public CrtPacket Packet(int bank, CrtWindow window, int length)
    {
        var isUpper = length == SplitSize && (long)bank * window.Length >= length / 2;
        return new CrtPacket(ChipKind, bank, isUpper ? window.Address + WindowSize : window.Address, window.Length);
    }
}
