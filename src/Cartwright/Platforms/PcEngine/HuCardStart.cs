using System.Buffers.Binary;
using System.Numerics;
using Cartwright.Ordering;

namespace Cartwright.Platforms.PcEngine;

/// <summary>
/// How a card's program begins: nearly all disable interrupts (SEI), switch to high speed (CSH) and set the mapping registers
/// (TAM) at once. Seen in all real images that were looked at.
/// </summary>
internal static class HuCardStart
{
    private const byte Sei = 0x78;
    private const byte Csh = 0xD4;
    private const byte Tam = 0x53;
    private const byte LoadImmediate = 0xA9;
    private const int Looked = 24;

    /// <summary>How surely an image begins like a card's; null when it does not.</summary>
    /// <param name="image">The image, without a prefix.</param>
    /// <param name="isReversed">Whether the bits of its bytes are reversed.</param>
    public static Certainty? Of(ReadOnlySpan<byte> image, bool isReversed)
    {
        if (image.Length < HuCard.Bank)
        {
            return null;
        }

        Span<byte> vector = [image[HuCard.Reset], image[HuCard.Reset + 1]];
        Turn(vector, isReversed);
        var entry = BinaryPrimitives.ReadUInt16LittleEndian(vector) - HuCard.BankZero;
        return entry < 0 ? null : OfCode(image[entry..HuCard.Bank], isReversed);
    }

    private static Certainty? OfCode(ReadOnlySpan<byte> rest, bool isReversed)
    {
        Span<byte> code = stackalloc byte[Looked];
        code.Clear();
        var length = Math.Min(Looked, rest.Length);
        rest[..length].CopyTo(code);
        Turn(code, isReversed);
        return OfOpcodes(code);
    }

    private static Certainty? OfOpcodes(ReadOnlySpan<byte> code)
    {
        var speeds = code[1..4].Contains(Csh);
        var maps = SetsMapping(code);
        return code[0] switch
        {
            Sei when speeds && maps => Certainty.Exact,
            Sei when speeds || maps => Certainty.Structural,
            Csh or LoadImmediate when maps => Certainty.Structural,
            Csh => Certainty.Candidate,
            Sei when code[1..21].Contains(Tam) => Certainty.Candidate,
            LoadImmediate when code[1..8].Contains(Tam) => Certainty.Candidate,
            _ => null,
        };
    }

    // LDA of a bank, then TAM of one register.
    private static bool SetsMapping(ReadOnlySpan<byte> code)
    {
        for (var i = 0; i + 3 < code.Length; i++)
        {
            if (code[i] == LoadImmediate && code[i + 2] == Tam && BitOperations.IsPow2((uint)code[i + 3]))
            {
                return true;
            }
        }

        return false;
    }

    private static void Turn(Span<byte> bytes, bool isReversed)
    {
        if (isReversed)
        {
            BitReverse.Reverse8(bytes);
        }
    }
}
