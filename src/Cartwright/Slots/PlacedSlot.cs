using Cartwright.Images;

namespace Cartwright.Slots;

/// <summary>A game's share of one region, at its place.</summary>
/// <param name="index">The game's number, from 0.</param>
/// <param name="title">What it is called.</param>
/// <param name="file">Its image as the manifest writes it.</param>
/// <param name="region">The region.</param>
/// <param name="start">First byte of the slot in the region.</param>
/// <param name="size">Bytes of the slot, a power of two.</param>
/// <param name="bytes">The game's own bytes, no more than the slot has.</param>
public sealed class PlacedSlot(int index, string title, string file, string region, long start, long size, ReadOnlyMemory<byte> bytes)
{
    private FileDigest? _digest;

    /// <summary>The game's number, from 0.</summary>
    public int Index => index;

    /// <summary>What it is called.</summary>
    public string Title => title;

    /// <summary>Its image as the manifest writes it.</summary>
    public string File => file;

    /// <summary>The region.</summary>
    public string Region => region;

    /// <summary>First byte of the slot in the region.</summary>
    public long Start => start;

    /// <summary>Bytes of the slot, a power of two.</summary>
    public long Size => size;

    /// <summary>The game's own bytes, no more than the slot has.</summary>
    public ReadOnlyMemory<byte> Bytes => bytes;

    /// <summary>Offset of the byte after the slot's last.</summary>
    public long End => start + size;

    /// <summary>Bytes of the slot that the game does not use.</summary>
    public long Unused => size - bytes.Length;

    /// <summary>What identifies the game's bytes. Computed when first asked for, as record and report both want it.</summary>
    public FileDigest Digest => _digest ??= FileDigest.Of(bytes.Span);
}
