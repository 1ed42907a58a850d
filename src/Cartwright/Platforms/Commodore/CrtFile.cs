using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Commodore;

/// <summary>A container as it was read.</summary>
/// <param name="Hardware">The kind of board.</param>
/// <param name="Lines">Levels of the lines; they say something on the C64 only.</param>
/// <param name="Runs">The packets in the order of the file.</param>
public sealed record CrtFile(int Hardware, CrtLines Lines, ImmutableArray<CrtRun> Runs)
{
    // A smaller length is known to be wrong (CRT file format).
    private const uint LargestHeader = 0x1000;

    /// <summary>Bytes of ROM the packets hold.</summary>
    public long Size => Runs.Sum(static run => (long)run.Length);

    /// <summary>Bytes the packets say they hold and the file does not have.</summary>
    public long Missing => Runs.Sum(static run => (long)run.Packet.Size - run.Length);

    /// <summary>Bytes before the ROM where one packet holds all of it; else bytes before the first packet.</summary>
    public int PrefixLength => Runs.IsEmpty ? CrtHeader.Length : Runs.Length == 1 ? Runs[0].Start : Runs[0].Start - CrtPacket.HeaderLength;

    /// <summary>What it holds, in words.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"the container's signature, {Runs.Length} packet{(Runs.Length == 1 ? "" : "s")} with {ByteSize.Words(Size)}")
        + (Missing > 0 ? $"; {ByteSize.Words(Missing)} are missing" : "");

    /// <summary>Reads a container.</summary>
    /// <param name="file">The file.</param>
    /// <param name="signature">The machine's signature without the spaces that follow.</param>
    /// <returns>Null when it is none of that machine.</returns>
    public static CrtFile? Read(ReadOnlySpan<byte> file, string signature)
    {
        if (!IsOne(file, signature))
        {
            return null;
        }

        var runs = ImmutableArray.CreateBuilder<CrtRun>();
        var at = Math.Max((long)BinaryPrimitives.ReadUInt32BigEndian(file[CrtHeader.LengthAt..]), CrtHeader.Length);
        while (at < file.Length && CrtPacket.Read(file[(int)at..], out var total) is { } packet)
        {
            var start = (int)at + CrtPacket.HeaderLength;
            runs.Add(new CrtRun(packet, start, Math.Min(packet.Size, file.Length - start)));
            // A packet cannot be shorter than its data.
            at += Math.Max(total, CrtPacket.HeaderLength + packet.Size);
        }

        return new CrtFile(BinaryPrimitives.ReadUInt16BigEndian(file[CrtHeader.HardwareAt..]), new CrtLines(file[CrtHeader.ExromAt], file[CrtHeader.GameAt]), runs.ToImmutable());
    }

    private static bool IsOne(ReadOnlySpan<byte> file, string signature)
    {
        if (file.Length < CrtHeader.Length || BinaryPrimitives.ReadUInt32BigEndian(file[CrtHeader.LengthAt..]) > LargestHeader)
        {
            return false;
        }

        var first = file[..CrtHeader.SignatureLength];
        for (var i = 0; i < first.Length; i++)
        {
            if (first[i] != (i < signature.Length ? signature[i] : ' '))
            {
                return false;
            }
        }

        return true;
    }
}
