using System.Buffers.Binary;

namespace Cartwright.Tests.Patching;

/// <summary>Patches of random records and actions, and ways to spoil them.</summary>
internal static class RandomPatches
{
    public static byte[] Bytes(Random random, int length)
    {
        var bytes = new byte[length];
        random.NextBytes(bytes);
        return bytes;
    }

    public static byte[] Ips(Random random)
    {
        var patch = new List<byte>(PatchBench.Ascii("PATCH"));
        for (var left = random.Next(6); left > 0; left--)
        {
            var isRun = random.Next(2) == 0;
            var size = random.Next(1, 40);
            patch.AddRange([0, (byte)random.Next(3), (byte)random.Next(256), 0, isRun ? (byte)0 : (byte)size]);
            patch.AddRange(isRun ? [0, (byte)size, (byte)random.Next(256)] : Bytes(random, size));
        }

        patch.AddRange(PatchBench.Ascii("EOF"));
        if (random.Next(3) == 0) patch.AddRange([0, (byte)random.Next(3), (byte)random.Next(256)]);
        return [.. patch];
    }

    public static byte[] Bps(Random random, byte[] image)
    {
        var actions = new List<byte>();
        var (made, source, target) = (0, 0, 0);
        for (var left = random.Next(12); left > 0; left--)
        {
            var length = random.Next(1, 50);
            var command = random.Next(4);
            if (command == 0 && made + length > image.Length) command = 1;
            if (command == 2 && length > image.Length) command = 1;
            if (command == 3 && made == 0) command = 1;
            actions.AddRange(Number((ulong)(((length - 1) * 4) + command)));
            if (command == 1) actions.AddRange(Bytes(random, length));
            if (command == 2) source = Move(actions, source, random.Next(image.Length - length + 1)) + length;
            if (command == 3) target = Move(actions, target, random.Next(made)) + length;
            made += length;
        }

        var metadata = Bytes(random, random.Next(4));
        byte[] patch = [.. PatchBench.Ascii("BPS1"), .. Number((ulong)image.Length), .. Number((ulong)made), .. Number((ulong)metadata.Length), .. metadata, .. actions, .. new byte[12]];
        return Sign(patch, image, NaiveBps.Unchecked(image, patch)!);
    }

    /// <summary>Puts the CRC-32s right; that of the result only when there is one.</summary>
    public static byte[] Sign(byte[] patch, byte[] image, byte[]? output)
    {
        if (patch.Length < 16) return patch;
        BinaryPrimitives.WriteUInt32LittleEndian(patch.AsSpan(patch.Length - 12), NaiveBps.Crc(image));
        if (output is not null) BinaryPrimitives.WriteUInt32LittleEndian(patch.AsSpan(patch.Length - 8), NaiveBps.Crc(output));
        BinaryPrimitives.WriteUInt32LittleEndian(patch.AsSpan(patch.Length - 4), NaiveBps.Crc(patch[..^4]));
        return patch;
    }

    /// <summary>A BPS number.</summary>
    public static byte[] Number(ulong value)
    {
        var bytes = new List<byte>();
        while (true)
        {
            var low = (byte)(value & 0x7F);
            value >>= 7;
            if (value == 0)
            {
                bytes.Add((byte)(low | 0x80));
                return [.. bytes];
            }

            bytes.Add(low);
            value--;
        }
    }

    /// <summary>A patch of the same beginning with some bytes changed, lost, added or doubled.</summary>
    public static byte[] Spoil(Random random, byte[] patch, int keep)
    {
        var bytes = new List<byte>(patch);
        for (var left = random.Next(1, 4); left > 0 && bytes.Count > keep; left--)
        {
            var at = random.Next(keep, bytes.Count);
            var count = random.Next(1, Math.Min(8, bytes.Count - at) + 1);
            switch (random.Next(6))
            {
                case 0:
                    bytes.RemoveRange(at, count);
                    break;
                case 1:
                    bytes.InsertRange(at, Bytes(random, count));
                    break;
                case 2:
                    bytes.InsertRange(at, bytes.GetRange(at, count));
                    break;
                case 3:
                    bytes[at] = (byte)(bytes[at] ^ (1 << random.Next(8)));
                    break;
                case 4:
                    bytes[at] = random.Next(2) == 0 ? (byte)0xFF : (byte)0;
                    break;
                default:
                    bytes[at] = (byte)random.Next(256);
                    break;
            }
        }

        return [.. bytes];
    }

    private static int Move(List<byte> actions, int from, int to)
    {
        actions.AddRange(Number(((ulong)Math.Abs(to - from) << 1) | (to < from ? 1UL : 0)));
        return to;
    }
}
