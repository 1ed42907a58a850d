using System.Globalization;
using Cartwright.Roms;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The ROM as the 68000 sees it without and with the adapter, and as the SH-2 processors do.</summary>
internal sealed class Sega32XAddresses : AddressMap
{
    /// <summary>The ROM's first byte for the SH-2 processors (from memory).</summary>
    public const int ForSh2 = 0x02000000;

    private const int Fixed = 0x880000;
    private const int Piece = 0x900000;
    private const int PieceSize = 0x100000;
    private const int Sh2Ram = 0x06000000;
    private const int Sh2RamSize = 0x40000;

    private static readonly MegaDriveAddresses Plain = new(pages: false);

    /// <inheritdoc/>
    public override string Forms => "an address such as $000800, $880800 or $02000800, or piece and address such as 03:900000";

    /// <inheritdoc/>
    public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize) => address switch
    {
        { Bank: { } piece } => InPiece(piece, address.Address),
        { Address: >= Fixed and < Piece } => In(address.Address - Fixed, Piece - Fixed),
        { Address: >= Piece and < Piece + PieceSize } => AddressPlace.Nowhere($"${address.Address:X6} shows one of four pieces of 1 MiB; say which, such as 00:{address.Address:X6}"),
        { Address: >= ForSh2 and < ForSh2 + MegaDriveAddresses.WindowEnd } => In(address.Address - ForSh2, MegaDriveAddresses.WindowEnd),
        { Address: >= Sh2Ram and < Sh2Ram + Sh2RamSize } => AddressPlace.Nowhere($"${address.Address:X8} is the SH-2 processors' RAM; give the segment a load address in the ROM"),
        _ => Plain.Locate(address, statedSize),
    };

    private static AddressPlace InPiece(long piece, long address) =>
        piece < MegaDriveAddresses.WindowEnd / PieceSize && address is >= Piece and < Piece + PieceSize
            ? AddressPlace.In(MegaDriveHeader.Region, (piece * PieceSize) + address - Piece, Piece + PieceSize - address)
            : AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"pieces go from 00 to {(MegaDriveAddresses.WindowEnd / PieceSize) - 1:X2} and their addresses from ${Piece:X6} to ${Piece + PieceSize - 1:X6}"));

    private static AddressPlace In(long within, long length) => AddressPlace.In(MegaDriveHeader.Region, within, length - within);
}
