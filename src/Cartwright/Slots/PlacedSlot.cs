using Cartwright.Images;

namespace Cartwright.Slots;

/// <summary>A game's share of one region, at its place.</summary>
/// <param name="Index">The game's number, from 0.</param>
/// <param name="Title">What it is called.</param>
/// <param name="File">Its image as the manifest writes it.</param>
/// <param name="Region">The region.</param>
/// <param name="Start">First byte of the slot in the region.</param>
/// <param name="Size">Bytes of the slot, a power of two.</param>
/// <param name="Bytes">The game's own bytes, no more than the slot has.</param>
public sealed record PlacedSlot(int Index, string Title, string File, string Region, long Start, long Size, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>Offset of the byte after the slot's last.</summary>
    public long End => Start + Size;

    /// <summary>Bytes of the slot that the game does not use.</summary>
    public long Unused => Size - Bytes.Length;

    /// <summary>What identifies the game's bytes.</summary>
    public FileDigest Digest() => FileDigest.Of(Bytes.Span);
}
