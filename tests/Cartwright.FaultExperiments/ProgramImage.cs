using System.Text;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Makes images with the statistics of an ordinary program: code, tables, text, graphics, and unused space.</summary>
/// <param name="random">Where the choices come from.</param>
internal sealed class ProgramImage(SmallRandom random)
{
    private static readonly string[] Words =
        ["LANTERN", "TIDE", "PRESS", "START", "HARBOUR", "KEEPER", "THE", "SEA", "IS", "DARK", "LIGHT", "LAMP", "OIL", "GAME", "OVER", "SCORE", "LEVEL"];

    // A few dozen instruction bytes make up most of any 8-bit program.
    private readonly byte[] common = random.Bytes(40);

    /// <summary>An image of a size: partly used, full, repeated, or at the top of the chip.</summary>
    public byte[] Make(int size) => random.Below(6) switch
    {
        0 => Content(size),
        1 => Repeated(size),
        2 => AtTop(size),
        _ => Partly(size),
    };

    private byte[] Partly(int size)
    {
        var image = Enumerable.Repeat(random.Of<byte>(0xFF, 0xFF, 0xFF, 0), size).ToArray();
        Content(size * random.Between(50, 70) / 100).CopyTo(image, 0);
        return image;
    }

    private byte[] Repeated(int size)
    {
        var half = Content(size / 2);
        return [.. half, .. half];
    }

    private byte[] AtTop(int size)
    {
        var image = Enumerable.Repeat((byte)0xFF, size).ToArray();
        Content(size / 2).CopyTo(image, size / 2);
        return image;
    }

    private byte[] Content(int size)
    {
        var content = new List<byte>(size + 1024);
        while (content.Count < size)
        {
            var length = random.Between(64, 1024);
            content.AddRange(random.Below(10) switch
            {
                < 5 => Code(length),
                < 7 => Graphics(length),
                7 => Text(length),
                8 => Table(length),
                _ => new byte[length / 4],
            });
        }

        return [.. content.Take(size)];
    }

    private IEnumerable<byte> Code(int length) =>
        Enumerable.Range(0, length).Select(_ => random.Below(3) switch { 0 => (byte)random.Below(256), 1 => (byte)random.Below(16), _ => common[random.Below(common.Length)] });

    private byte[] Text(int length)
    {
        var text = new StringBuilder();
        while (text.Length < length)
            text.Append(Words[random.Below(Words.Length)]).Append(random.Below(8) == 0 ? "\r\n" : " ");

        return Encoding.ASCII.GetBytes(text.ToString());
    }

    private IEnumerable<byte> Table(int length)
    {
        var step = random.Between(1, 9);
        var high = random.Below(256);
        return Enumerable.Range(0, length).Select(i => i % 2 == 0 ? (byte)(i * step) : (byte)(high + (i * step >> 8)));
    }

    private IEnumerable<byte> Graphics(int length)
    {
        var row = random.Below(256);
        return Enumerable.Range(0, length).Select(_ => (byte)(random.Below(4) == 0 ? row = random.Below(256) : random.Below(5) == 0 ? row = 0 : row ^ (row >> 1)));
    }
}
