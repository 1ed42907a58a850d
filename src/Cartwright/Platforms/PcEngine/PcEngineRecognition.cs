using System.Buffers.Binary;
using Cartwright.Ordering;

namespace Cartwright.Platforms.PcEngine;

/// <summary>Knows images of cards by how their program begins, in either order of bits and with a copier prefix or without.</summary>
internal static class PcEngineRecognition
{
    private const byte CardProgram = 0x02;

    /// <summary>The claim on a file.</summary>
    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        var prefix = file.Length % HuCard.Bank;
        return prefix is 0 or CopierPrefix.Length && OfImage(file[prefix..]) is { } claim ? claim with { PrefixLength = prefix } : null;
    }

    /// <summary>Whether a program begins with a copier prefix: its length says so, and what is in the prefix or behind it.</summary>
    public static bool HasPrefix(ReadOnlySpan<byte> program) =>
        program.Length % HuCard.Bank == CopierPrefix.Length && (IsShortPrefix(program) || IsLongPrefix(program) || OfImage(program[CopierPrefix.Length..]) is not null);

    private static RecognitionClaim? OfImage(ReadOnlySpan<byte> image)
    {
        var plain = HuCardStart.Of(image, isReversed: false);
        var reversed = HuCardStart.Of(image, isReversed: true);
        return reversed is { } turned && (plain is null || turned > plain)
            ? new RecognitionClaim(turned, "with the bits of each byte reversed it begins as a card's program does") { Order = ImageOrder.BitReversed }
            : plain is { } straight ? new RecognitionClaim(straight, "it begins as a card's program does, where its reset vector points") : null;
    }

    // As homebrew tools write it: the number of banks, and nothing else.
    private static bool IsShortPrefix(ReadOnlySpan<byte> program) =>
        BinaryPrimitives.ReadUInt16LittleEndian(program) == (program.Length - CopierPrefix.Length) / HuCard.Bank
        && !program[2..CopierPrefix.Length].ContainsAnyExcept((byte)0);

    private static bool IsLongPrefix(ReadOnlySpan<byte> program) => program[8..].StartsWith((ReadOnlySpan<byte>)[0xAA, 0xBB, CardProgram]);
}
