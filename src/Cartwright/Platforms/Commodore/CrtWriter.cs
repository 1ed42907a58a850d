using System.Collections.Immutable;

namespace Cartwright.Platforms.Commodore;

/// <summary>Puts a ROM into packets behind a container's header.</summary>
internal static class CrtWriter
{
    private const byte Missing = 0xFF;

    public static ImmutableArray<ReadOnlyMemory<byte>> Parts(CartView cart, CommodoreMapping mapping)
    {
        var parts = ImmutableArray.CreateBuilder<ReadOnlyMemory<byte>>();
        parts.Add(cart.Headers.First(static header => header.Table.Region is null).Container.AsMemory());
        var rom = cart.Rom[CommodoreMapping.Region]!.Bytes;
        for (var (bank, at) = (0, 0); at < rom.Length; bank++)
        {
            foreach (var window in mapping.Windows)
            {
                if (at < rom.Length)
                {
                    AddPacket(parts, rom[at..Math.Min(at + window.Length, rom.Length)], mapping.Packet(bank, window, rom.Length), isFirst: at == 0);
                    at += window.Length;
                }
            }
        }

        return parts.ToImmutable();
    }

    // A packet that is not there reads as FF. One is as long as its window, so that a smaller ROM is repeated as its chip would be.
    private static void AddPacket(ImmutableArray<ReadOnlyMemory<byte>>.Builder parts, ReadOnlyMemory<byte> bytes, CrtPacket packet, bool isFirst)
    {
        if (!isFirst && !bytes.Span.ContainsAnyExcept(Missing))
        {
            return;
        }

        parts.Add(packet.ToBytes());
        for (var length = 0; length < packet.Size; length += bytes.Length)
        {
            parts.Add(bytes);
        }
    }
}
