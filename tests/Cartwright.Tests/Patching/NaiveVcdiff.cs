using System.Numerics;
using Cartwright.Patching;

namespace Cartwright.Tests.Patching;

/// <summary>VCDIFF byte by byte, straight from RFC 3284 and its Adler-32 extension. Null when anything is wrong.</summary>
internal sealed class NaiveVcdiff
{
    private readonly byte[] _image;
    private readonly byte[] _patch;
    private readonly List<byte> _output = [];
    private int _at = 3;

    private NaiveVcdiff(byte[] image, byte[] patch) => (_image, _patch) = (image, patch);

    /// <summary>Type, size and mode of the first and of the second instruction of each code.</summary>
    public static IReadOnlyList<(int Type, int Size, int Mode)[]> Table { get; } = [.. Codes()];

    public static byte[]? Apply(byte[] image, byte[] patch)
    {
        try
        {
            return new NaiveVcdiff(image, patch).Run();
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    /// <summary>Adler-32 as RFC 1950 defines it.</summary>
    public static uint Adler(IEnumerable<byte> bytes)
    {
        var (a, b) = (1UL, 0UL);
        foreach (var value in bytes)
        {
            a = (a + value) % 65521;
            b = (b + a) % 65521;
        }

        return (uint)((b * 65536) + a);
    }

    private static IEnumerable<(int, int, int)[]> Codes()
    {
        yield return [(2, 0, 0), (0, 0, 0)];
        for (var size = 0; size <= 17; size++) yield return [(1, size, 0), (0, 0, 0)];
        for (var mode = 0; mode <= 8; mode++)
        {
            foreach (var size in Enumerable.Range(4, 15).Prepend(0)) yield return [(3, size, mode), (0, 0, 0)];
        }

        for (var mode = 0; mode <= 5; mode++)
        {
            for (var pair = 0; pair < 12; pair++) yield return [(1, 1 + (pair / 3), 0), (3, 4 + (pair % 3), mode)];
        }

        for (var mode = 6; mode <= 8; mode++)
        {
            for (var added = 1; added <= 4; added++) yield return [(1, added, 0), (3, 4, mode)];
        }

        for (var mode = 0; mode <= 8; mode++) yield return [(3, 4, mode), (1, 1, 0)];
    }

    private byte[] Run()
    {
        Insist(_patch.Length >= 5 && _patch[0] == 0xD6 && _patch[1] == 0xC3 && _patch[2] == 0xC4 && _patch[3] == 0);
        var indicator = _patch[4];
        _at = 5;
        Insist((indicator & 0xF8) == 0 && (indicator & 2) == 0);
        if ((indicator & 1) != 0) Byte();
        if ((indicator & 4) != 0) Section(Number());
        while (_at < _patch.Length) Window();
        return [.. _output];
    }

    private void Window()
    {
        var indicator = Byte();
        Insist((indicator & 0xF8) == 0 && (indicator & 3) != 3);
        byte[] segment = [];
        if ((indicator & 3) != 0)
        {
            var (size, position) = (Number(), Number());
            byte[] whole = (indicator & 1) != 0 ? _image : [.. _output];
            Insist(position + size <= whole.Length);
            segment = whole[(int)position..(int)(position + size)];
        }

        var length = Number();
        Insist(length <= _patch.Length - _at);
        var end = _at + (int)length;
        var made = Number();
        Insist(made + _output.Count <= Patch.LargestResult);
        Insist(Byte() == 0);
        var (dataSize, instructionSize, addressSize) = (Number(), Number(), Number());
        var adler = (indicator & 4) == 0 ? (uint?)null : ((uint)Byte() << 24) | ((uint)Byte() << 16) | ((uint)Byte() << 8) | Byte();
        Insist(_at + dataSize + instructionSize + addressSize == end);
        var (data, instructions, addresses) = (Section(dataSize), Section(instructionSize), Section(addressSize));
        var target = Target(segment, (int)made, data, instructions, addresses);
        Insist(adler is null || adler == Adler(target));
        _output.AddRange(target);
    }

    private static List<byte> Target(byte[] segment, int size, Queue<byte> data, Queue<byte> instructions, Queue<byte> addresses)
    {
        var all = new List<byte>(segment);
        var (near, same, slot) = (new BigInteger[4], new BigInteger[768], 0);
        while (instructions.Count > 0)
        {
            foreach (var (type, small, mode) in Table[instructions.Dequeue()].Where(step => step.Type != 0))
            {
                var count = small == 0 ? Number(instructions) : small;
                Insist(all.Count - segment.Length + count <= size);
                if (type == 3)
                {
                    var address = mode switch
                    {
                        0 => Number(addresses),
                        1 => all.Count - Number(addresses),
                        <= 5 => near[mode - 2] + Number(addresses),
                        _ => same[((mode - 6) * 256) + Take(addresses)],
                    };
                    Insist(address >= 0 && address < all.Count);
                    Insist(address >= segment.Length || address + count <= segment.Length);
                    near[slot] = address;
                    slot = (slot + 1) % 4;
                    same[(int)(address % 768)] = address;
                    for (var i = 0; i < count; i++) all.Add(all[(int)address + i]);
                    continue;
                }

                var value = type == 2 ? Take(data) : (byte)0;
                for (var i = 0; i < count; i++) all.Add(type == 2 ? value : Take(data));
            }
        }

        Insist(all.Count - segment.Length == size && data.Count == 0 && addresses.Count == 0);
        return all[segment.Length..];
    }

    private Queue<byte> Section(BigInteger length)
    {
        Insist(_at + length <= _patch.Length);
        var start = _at;
        _at += (int)length;
        return new Queue<byte>(_patch[start.._at]);
    }

    private BigInteger Number() => Number(Byte);

    private static BigInteger Number(Queue<byte> section) => Number(() => Take(section));

    private static BigInteger Number(Func<byte> next)
    {
        var value = BigInteger.Zero;
        for (var count = 1; ; count++)
        {
            var part = next();
            value = (value * 128) + (part & 0x7F);
            Insist(count <= 10 && value <= long.MaxValue);
            if ((part & 0x80) == 0) return value;
        }
    }

    private byte Byte()
    {
        Insist(_at < _patch.Length);
        return _patch[_at++];
    }

    private static byte Take(Queue<byte> section)
    {
        Insist(section.Count > 0);
        return section.Dequeue();
    }

    private static void Insist(bool isSo)
    {
        if (!isSo) throw new InvalidDataException();
    }
}
