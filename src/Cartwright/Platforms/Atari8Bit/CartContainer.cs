using System.Buffers.Binary;
using Cartwright.Checksums;
using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The CART container: 16 bytes in front of the ROM in the exchange file, on no chip.</summary>
public static class CartContainer
{
    /// <summary>Bytes of the container header.</summary>
    public const int Length = 16;

    internal const string Type = "cartType";
    internal const string None = "none";

    private const string Source = "CAR; CAR extension page";
    private const int LargestNumber = 0xFF;

    /// <summary>The option both machines have.</summary>
    internal static PlatformOption Option { get; } = new("container",
        [new NamedValue(0, None, "the ROM alone"), new NamedValue(1, "cart", "the CART container's 16 bytes in front of the ROM")],
        None, "What the exchange file begins with; chip files never have it.", Source);

    internal static ReadOnlySpan<byte> Magic => "CART"u8;

    /// <summary>The table.</summary>
    /// <param name="console">True for the Atari 5200.</param>
    /// <param name="typeOf">The name of the board's number, by the ROM's length in bytes; null where only the manifest can say it.</param>
    internal static HeaderTable Table(bool console, Func<long, string?> typeOf) => new("CART container", null, new HeaderAnchor(0), Length,
    [
        new("magic", 0, 4, new TextCodec(0), "The letters CART, by which the container is known.", Source) { WorkOut = static _ => "CART" },
        new(Type, 4, 4, new NumberCodec(new BytesPlacement(4, ByteOrder.BigEndian), CartType.Words(console)), "The number of the board the ROM is for.", Source)
            { WorkOut = context => typeOf(context.LengthOf("rom")), Required = true },
        new("reserved12", 12, 4, new BytesCodec(4), "Reserved, and zero.", Source) { Default = "00000000" },
    ])
    {
        Checksums =
        [
            new("checksum", 8, 4, ByteOrder.BigEndian, static rom => ByteSum.Sum32(rom), "The sum of all bytes of the ROM, modulo 2^32", Source) { Over = "rom" },
        ],
    };

    /// <summary>What a file that begins with the container claims; null when it does not, or is for the other machine.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="console">True to ask for the Atari 5200.</param>
    internal static RecognitionClaim? Claim(ReadOnlySpan<byte> file, bool console)
    {
        if (Number(file) is not { } number || (CartType.All.FirstOrDefault(row => row.Number == number)?.Console ?? false) != console)
        {
            return null;
        }

        var right = BinaryPrimitives.ReadUInt32BigEndian(file[8..]) == ByteSum.Sum32(file[Length..]);
        return new RecognitionClaim(Certainty.Exact, $"it begins with the CART container, number {number}, and its checksum is {(right ? "right" : "wrong")}") { PrefixLength = Length };
    }

    /// <summary>The board's number in a container; null when the bytes begin with none.</summary>
    /// <param name="file">The bytes.</param>
    internal static int? Number(ReadOnlySpan<byte> file) =>
        file.Length > Length && file.StartsWith(Magic) && BinaryPrimitives.ReadUInt32BigEndian(file[4..]) is var number and >= 1 and <= LargestNumber ? (int)number : null;
}
