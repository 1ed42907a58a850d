using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>A size code of the header and the bytes it makes the checksum cover (ROM Header, smspower.org; codes E to 1 by one decoder and from memory).</summary>
/// <param name="Code">The nibble.</param>
/// <param name="Size">The size in bytes the code stands for: the ROM must have as many.</param>
/// <param name="FirstEnd">The byte after the first run, which begins at 0.</param>
/// <param name="SecondStart">First byte of the second run, which ends at the size; the size itself where there is none.</param>
public sealed record ChecksumRange(byte Code, int Size, int FirstEnd, int SecondStart)
{
    private const int LastHeader = 0x7FF0;
    private const int Behind = 0x8000;

    /// <summary>The codes that may be written.</summary>
    public static ImmutableArray<ChecksumRange> Sound { get; } =
    [
        new(0xA, 8 << 10, 0x1FF0, 8 << 10),
        new(0xB, 16 << 10, 0x3FF0, 16 << 10),
        new(0xC, 32 << 10, LastHeader, 32 << 10),
        new(0xE, 64 << 10, LastHeader, Behind),
        new(0xF, 128 << 10, LastHeader, Behind),
        new(0x0, 256 << 10, LastHeader, Behind),
        new(0x1, 512 << 10, LastHeader, Behind),
    ];

    /// <summary>1 MiB: reported to be summed wrongly, so it is computed and never written.</summary>
    public static ChecksumRange Megabyte { get; } = new(0x2, 1 << 20, LastHeader, Behind);

    /// <summary>32 KiB: the code that is right for every ROM of that size or more.</summary>
    public static ChecksumRange Safest { get; } = Of(0xC)!;

    /// <summary>How the codes are written.</summary>
    public static SizeCode Words { get; } = new([.. Sound.Select(static range => ((ulong)range.Code, (long)range.Size))]);

    /// <summary>The range of a code; null for faulty and undefined ones.</summary>
    /// <param name="code">The nibble.</param>
    public static ChecksumRange? Of(int code) => Sound.FirstOrDefault(range => range.Code == code);

    /// <summary>The code for a ROM whose header states none.</summary>
    /// <param name="length">Length of the ROM in bytes.</param>
    public static ChecksumRange For(long length) => length >= Safest.Size ? Safest : Sound.Last(range => range.Size <= Math.Max(length, Sound[0].Size));

    /// <summary>The code as the manifest writes it.</summary>
    public string Text => ByteSize.Format(Size);
}
