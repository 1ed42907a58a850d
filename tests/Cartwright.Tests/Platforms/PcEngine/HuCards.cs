using Cartwright.Images;
using Cartwright.Platforms.PcEngine;
using Cartwright.Roms;
using Cartwright.Tests.Boards;
using Xunit;

namespace Cartwright.Tests.Platforms.PcEngine;

/// <summary>Cards for the tests.</summary>
internal static class HuCards
{
    public const int K = 1 << 10;

    public static PcEnginePlatform Machine { get; } = new();

    /// <summary>Bytes of the generator with a common start at 0x0100 and a reset vector that points to it; unused vectors are $FFFF.</summary>
    public static byte[] Program(int length, int reset = 0xE100)
    {
        var program = TestBytes.L(length);
        ((byte[])[0x78, 0xD4, 0xD8, 0xA9, 0xFF, 0x53, 0x01, 0xA9, 0xF8, 0x53, 0x02]).CopyTo(program, 0x100);
        program.AsSpan(0x1FF6, 8).Fill(0xFF);
        (program[0x1FFE], program[0x1FFF]) = ((byte)reset, (byte)(reset >> 8));
        return program;
    }

    public static RomBench Bench(byte[] program) => new RomBench(Machine).Program("rom", 0, program);

    /// <summary>The chip image of a ROM on a board of the catalogue.</summary>
    public static ChipImage Chip(string board, byte[] rom, int capacity)
    {
        var bench = new BoardBench($$"""
            "use": "{{board}}", "chips": { "U1": { "part": "own", "capacity": {{capacity}} } }
            """);
        var chip = Assert.Single(bench.Chips(new RegionImage("rom", rom, 0xFF, [])));
        Assert.False(bench.Log.HasErrors);
        return chip;
    }
}
