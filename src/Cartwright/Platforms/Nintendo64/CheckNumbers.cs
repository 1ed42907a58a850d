using System.Numerics;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The six running numbers behind the two check words (Disassembly of the N64 boot stages IPL1/2/3).</summary>
/// <param name="start">The value all of them start from.</param>
internal struct CheckNumbers(uint start)
{
    public uint Sum = start;
    public uint Carries = start;
    public uint Exclusive = start;
    public uint Rotated = start;
    public uint Compared = start;
    public uint Mixed = start;

    /// <summary>Takes in the next word.</summary>
    /// <param name="word">The word.</param>
    public void Add(uint word)
    {
        AddAlone(word);
        Mixed += word ^ Rotated;
    }

    /// <summary>Takes in the next word and a word of the boot code.</summary>
    /// <param name="word">The word.</param>
    /// <param name="boot">The word of the boot code.</param>
    public void Add(uint word, uint boot)
    {
        AddAlone(word);
        Mixed += boot ^ word;
    }

    /// <summary>The two words, the first in the upper half.</summary>
    /// <param name="rule">How they are made.</param>
    public readonly ulong Words(CheckRule rule)
    {
        var (first, second) = rule switch
        {
            CheckRule.Sum => ((Sum ^ Carries) + Exclusive, (Rotated ^ Compared) + Mixed),
            CheckRule.Product => ((Sum * Carries) + Exclusive, (Rotated * Compared) + Mixed),
            _ => (Sum ^ Carries ^ Exclusive, Rotated ^ Compared ^ Mixed),
        };
        return ((ulong)first << 32) | second;
    }

    private void AddAlone(uint word)
    {
        Sum += word;
        Carries += Sum < word ? 1u : 0u;
        Exclusive ^= word;
        var rotated = BitOperations.RotateLeft(word, (int)(word & 31));
        Rotated += rotated;
        Compared ^= Compared < word ? Sum ^ word : rotated;
    }
}
