using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>One fault: its kind and the parameters that this kind has. The others are left alone.</summary>
/// <param name="Kind">The name of the kind.</param>
public sealed record Fault(string Kind)
{
    /// <summary>Address and data lines, <c>A0</c> to <c>A31</c> and <c>D0</c> to <c>D15</c>.</summary>
    public ImmutableArray<string> Lines { get; init; } = [];

    public ImmutableArray<int> Map { get; init; } = [];

    /// <summary>What a short or a bridge shows: <c>low</c>, <c>high</c>, or <c>either</c>.</summary>
    public string Wins { get; init; } = "low";

    /// <summary>What an open line shows: <c>chance</c>, <c>low</c>, <c>high</c>, or a line.</summary>
    public string Follows { get; init; } = "chance";

    /// <summary>A chance bit stays for two to this power words in a row.</summary>
    public int Run { get; init; }

    public double Ones { get; init; } = 0.5;

    public string Within { get; init; } = "word";

    /// <summary>What a line that was dead while writing does when reading: <c>dead</c>, or it works and was <c>low</c> or <c>high</c>.</summary>
    public string Reading { get; init; } = "dead";

    public int Size { get; init; }

    public string Holds { get; init; } = "mixed";

    public ImmutableArray<int> Order { get; init; } = [];

    public int BankSize { get; init; }

    public int Bank { get; init; }

    public ImmutableArray<int> Values { get; init; } = [];

    public int By { get; init; }

    public int Length { get; init; }

    public ImmutableArray<byte> Prefix { get; init; } = [];

    public int Period { get; init; }

    public int Lanes { get; init; } = 2;

    public int Unit { get; init; } = 1;

    public int Value { get; init; } = 0xFF;

    /// <summary>What is seen: <c>ones</c>, <c>zeros</c>, <c>address</c> or <c>chance</c>.</summary>
    public string Shows { get; init; } = "ones";

    /// <summary>How often a weak bit reads as one.</summary>
    public double ShowsOne { get; init; } = 0.5;

    public int Shift { get; init; }

    /// <summary>The other contents some kinds need: old content, another image.</summary>
    public ImmutableArray<byte> Image { get; init; } = [];

    public double Share { get; init; } = 1;

    public int At { get; init; }

    public int Start { get; init; }

    public ImmutableArray<(int Start, int Length)> Blocks { get; init; } = [];

    public int SectorSize { get; init; }

    public ImmutableArray<int> Sectors { get; init; } = [];

    public string Mode { get; init; } = "identify";

    public ImmutableArray<int> Table { get; init; } = [];

    public string How { get; init; } = "";

    public double Rate { get; init; }

    public int ReadsAs { get; init; } = 1;

    public int Threshold { get; init; } = 6;

    /// <summary>The fault a contact has in its bad insertions.</summary>
    public Fault? Inner { get; init; }

    public ImmutableArray<int> BadInsertions { get; init; } = [];

    /// <summary>A fault of some lines.</summary>
    public static Fault Of(string kind, params ImmutableArray<string> lines) => new(kind) { Lines = lines };

    /// <summary>The numbers of the address lines named.</summary>
    public int[] AddressLines => Numbers('A');

    /// <summary>The numbers of the data lines named.</summary>
    public int[] DataLines => Numbers('D');

    private int[] Numbers(char bus) =>
        [.. Lines.Where(line => line[0] == bus).Select(LineNumber.Of)];
}
