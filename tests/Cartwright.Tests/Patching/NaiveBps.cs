using System.Numerics;
using Cartwright.Patching;

namespace Cartwright.Tests.Patching;

/// <summary>BPS byte by byte, straight from the BPS File Format Specification. Null when anything is wrong.</summary>
internal sealed class NaiveBps
{
    private readonly byte[] _image;
    private readonly byte[] _patch;
    private readonly List<byte> _output = [];
    private int _at = 4;

    private NaiveBps(byte[] image, byte[] patch) => (_image, _patch) = (image, patch);

    /// <summary>Applies with all checks.</summary>
    public static byte[]? Apply(byte[] image, byte[] patch)
    {
        if (patch.Length < 19 || Crc(patch[..^4]) != Word(patch, patch.Length - 4)) return null;
        if (Crc(image) != Word(patch, patch.Length - 12)) return null;
        var output = Unchecked(image, patch);
        return output is not null && Crc(output) == Word(patch, patch.Length - 8) ? output : null;
    }

    /// <summary>Applies without a look at the three CRC-32s.</summary>
    public static byte[]? Unchecked(byte[] image, byte[] patch)
    {
        try
        {
            return new NaiveBps(image, patch).Run();
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    /// <summary>CRC-32, bit by bit.</summary>
    public static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++) crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ 0xEDB88320;
        }

        return ~crc;
    }

    private static uint Word(byte[] bytes, int at) => (uint)(bytes[at] | (bytes[at + 1] << 8) | (bytes[at + 2] << 16) | (bytes[at + 3] << 24));

    private byte[] Run()
    {
        Insist(_patch.Length >= 19 && _patch is [(byte)'B', (byte)'P', (byte)'S', (byte)'1', ..]);
        Insist(Number() == _image.Length);
        var size = Number();
        Insist(size <= Patch.LargestResult);
        var metadata = Number();
        Insist(metadata <= _patch.Length - 12 - _at);
        _at += (int)metadata;
        var (source, target) = (BigInteger.Zero, BigInteger.Zero);
        while (_at < _patch.Length - 12)
        {
            var action = Number();
            var length = (action / 4) + 1;
            Insist(_output.Count + length <= size);
            var command = (int)(action % 4);
            if (command == 2) source += Signed();
            if (command == 3) target += Signed();
            for (var i = 0; i < (int)length; i++) _output.Add(Next(command, ref source, ref target));
        }

        Insist(_output.Count == size);
        return [.. _output];
    }

    private byte Next(int command, ref BigInteger source, ref BigInteger target) => command switch
    {
        0 => From(_image, _output.Count),
        1 => Byte(),
        2 => From(_image, source++),
        _ => From(_output, target++),
    };

    private static byte From(IList<byte> bytes, BigInteger at)
    {
        Insist(at >= 0 && at < bytes.Count);
        return bytes[(int)at];
    }

    private BigInteger Signed()
    {
        var number = Number();
        return number.IsEven ? number / 2 : -(number / 2);
    }

    private BigInteger Number()
    {
        var (value, scale) = (BigInteger.Zero, BigInteger.One);
        for (var count = 1; ; count++)
        {
            var next = Byte();
            value += (next & 0x7F) * scale;
            Insist(count <= 10 && value <= ulong.MaxValue);
            if ((next & 0x80) != 0) return value;
            scale *= 128;
            value += scale;
        }
    }

    private byte Byte()
    {
        Insist(_at < _patch.Length - 12);
        return _patch[_at++];
    }

    private static void Insist(bool isSo)
    {
        if (!isSo) throw new InvalidDataException();
    }
}
