namespace Cartwright.ReadBacks;

/// <summary>How several reads of one chip compare.</summary>
/// <param name="Reads">Number of reads.</param>
/// <param name="Rule">How one word is made of several: <c>majority</c>, <c>and</c>, or <c>single read</c>.</param>
/// <param name="Ties">Words that no rule decides.</param>
/// <param name="VaryingWords">Words that are not the same in every read.</param>
/// <param name="Within">Share of bits that differ between two reads of one insertion, on average; null where no insertion has two.</param>
/// <param name="Between">Share of bits that differ between two reads of different insertions; null where there is one insertion.</param>
/// <param name="ErrorRate">Bit errors of one read, estimated from pairs of reads.</param>
public sealed record ReadStatistics(int Reads, string Rule, int Ties, int VaryingWords, double? Within, double? Between, double ErrorRate);
