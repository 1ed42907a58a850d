namespace Cartwright.Platforms.Commodore;

/// <summary>A packet of a container and where its bytes are.</summary>
/// <param name="Packet">The packet.</param>
/// <param name="Start">Offset in the file of its first byte of data.</param>
/// <param name="Length">Bytes of data the file has; fewer than the packet says where the file was cut.</param>
public readonly record struct CrtRun(CrtPacket Packet, int Start, int Length);
