using System.Buffers.Binary;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>Tells from its bytes alone whether a file looks like a save at all.</summary>
public static class SaveCondition
{
    private const int LeastForNoise = 512;
    private const int LeastForEcho = 16;
    private const int LongestRunInNoise = 4;
    private const int ByteValues = 256;

    /// <summary>Adds what is to be said of the bytes.</summary>
    /// <param name="file">The file as the user wrote it.</param>
    /// <param name="bytes">Its bytes, one or more.</param>
    /// <param name="log">Receives findings.</param>
    public static void Check(string file, ReadOnlySpan<byte> bytes, FindingLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        var place = new SourcePlace(file);
        if (!bytes.ContainsAnyExcept(bytes[0]))
            log.Add(SaveFindings.AllAlike, place, $"Every byte is {Number.Hex(bytes[0], 2)}.");
        else if (IsEcho(bytes))
            log.Add(SaveFindings.Echo, place, "The bytes count as the addresses do.");
        else if (IsNoise(bytes))
            log.Add(SaveFindings.Noise, place, "Every value is about as frequent as any other, and none stands in a row for long.");
        else if (IsBlankFromTheMiddle(bytes))
            log.Add(SaveFindings.HalfWritten, SourcePlace.At(file, bytes.Length / 2), $"All from {Number.Hex(bytes.Length / 2, 6)} on is {Number.Hex(bytes[^1], 2)}, and right before it is not.");
    }

    /// <summary>True when the bytes are the low or high part of their addresses, or words of them in either order.</summary>
    private static bool IsEcho(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < LeastForEcho)
            return false;

        var (low, high, word, bigEndian, littleEndian) = (true, true, true, bytes.Length % 2 == 0, bytes.Length % 2 == 0);
        for (var i = 0; i < bytes.Length; i++)
        {
            low &= bytes[i] == (byte)i;
            high &= bytes[i] == (byte)(i >> 8);
            word &= bytes[i] == (byte)(i >> 1);
        }

        for (var i = 0; i + 1 < bytes.Length && (bigEndian || littleEndian); i += 2)
        {
            bigEndian &= BinaryPrimitives.ReadUInt16BigEndian(bytes[i..]) == (ushort)(i >> 1);
            littleEndian &= BinaryPrimitives.ReadUInt16LittleEndian(bytes[i..]) == (ushort)(i >> 1);
        }

        return low || high || word || bigEndian || littleEndian;
    }

    // Random bytes of this number fall short of 8 bits each by about 255 / (2 n ln 2); up to twice as much is taken for noise.
    private static bool IsNoise(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < LeastForNoise)
            return false;

        Span<int> counts = stackalloc int[ByteValues];
        counts.Clear();
        var (run, longest) = (0, 0);
        for (var i = 0; i < bytes.Length; i++)
        {
            counts[bytes[i]]++;
            run = i > 0 && bytes[i] == bytes[i - 1] ? run + 1 : 1;
            longest = Math.Max(longest, run);
        }

        var bits = 0.0;
        foreach (var count in counts)
        {
            if (count > 0)
                bits -= (double)count / bytes.Length * Math.Log2((double)count / bytes.Length);
        }

        return longest <= LongestRunInNoise && Math.Log2(ByteValues) - bits < (ByteValues - 1) / (bytes.Length * Math.Log(2));
    }

    private static bool IsBlankFromTheMiddle(ReadOnlySpan<byte> bytes) =>
        bytes.Length >= LeastForEcho && bytes.Length % 2 == 0 && bytes[^1] is 0x00 or 0xFF && bytes.LastIndexOfAnyExcept(bytes[^1]) == (bytes.Length / 2) - 1;
}
