using System.Buffers.Binary;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>A cart as the checks of this platform look at it.</summary>
/// <param name="view">The finished ROM.</param>
internal sealed class MegaDriveCart(CartView view)
{
    private readonly HeaderImage _header = view.Headers.First(static header => header.Table.Anchor.Offset == MegaDriveHeader.Start);

    /// <summary>The ROM's region.</summary>
    public RegionImage Region { get; } = view.Rom[MegaDriveHeader.Region]!;

    /// <summary>All bytes of the ROM.</summary>
    public ReadOnlySpan<byte> Bytes => Region.Bytes.Span;

    /// <summary>Length in bytes.</summary>
    public int Length => Region.Length;

    /// <summary>The checksum as stored and as computed.</summary>
    public ChecksumEntry Checksum => _header.Checksums[0];

    /// <summary>A field's value in words.</summary>
    public string Text(string field) => _header[field]!;

    /// <summary>A field's bytes.</summary>
    public ReadOnlySpan<byte> Raw(string field) => _header.Entries.First(entry => entry.Field.Name == field).Raw.AsSpan();

    /// <summary>A field's number.</summary>
    public uint Number(string field) => BinaryPrimitives.ReadUInt32BigEndian(Raw(field));

    /// <summary>Where to point for a field.</summary>
    public SourcePlace Place(string field) => view.Place("header:" + field);

    /// <summary>Where to point for bytes of the ROM: the program that covers them, or the list of programs.</summary>
    public SourcePlace PlaceOf(int offset) => Region.CoveringSegment(offset, 1)?.Place ?? view.Place("programs");
}
