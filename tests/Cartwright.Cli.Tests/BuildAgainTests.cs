using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>What a build says of the chips that the build before made.</summary>
public sealed class BuildAgainTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public BuildAgainTests()
    {
        _folder.Write("main.bin", Program());
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("SST39SF040", "U1  16 of 128 sectors change: 16 to erase, 0 to program only; about 1.")]
    [InlineData("AT29C040A", "U1  32 of 2048 pages change; about 0.32 s")]
    [InlineData("M27C801", "U1  the chip changes, and is erased as a whole, with ultraviolet light; about 52 s")]
    [InlineData("AT27C040", "U1  changed, and the chip cannot be erased: a new chip is needed")]
    [InlineData("AT28C010", "U1  2 of 1024 pages change; about 0.02 s")]
    public void The_sectors_that_change_are_told(string part, string line)
    {
        var cart = Cart(part);
        Assert.DoesNotContain("Changed since", CommandRun.Here("build", cart).Output, StringComparison.Ordinal);
        _folder.Write("main.bin", Program(changed: 0xEB));
        Assert.Contains($"Changed since the build that was there\n  {line}", CommandRun.Here("build", cart).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_as_data()
    {
        var cart = Cart("AT28C010");
        Assert.Contains("\"rewrites\": []", CommandRun.Here("build", cart, "--json").Output, StringComparison.Ordinal);
        _folder.Write("main.bin", Program(changed: 0xEB));
        Assert.Contains("\"changed\": true,\n      \"keep\": 1022,", CommandRun.Here("build", cart, "--json").Output, StringComparison.Ordinal);
    }

    // `sei` and `jmp $8000`, room for the header, and all vectors to $8000; one byte may be another.
    private static byte[] Program(byte changed = 0xEA)
    {
        var program = Enumerable.Repeat((byte)0xEA, 0x8000).ToArray();
        program[0x7000] = changed;
        program.AsSpan(0x7FB0, 0x30).Clear();
        foreach (var vector in Enumerable.Range(0x3FF0, 0x10))
        {
            (program[vector * 2], program[(vector * 2) + 1]) = (0x00, 0x80);
        }

        ReadOnlySpan<byte> start = [0x78, 0x4C, 0x00, 0x80];
        start.CopyTo(program);
        return program;
    }

    private string Cart(string part)
    {
        var fill = part == "AT28C010" ? "erased" : "repeat";
        _folder.Write("cart.json", System.Text.Encoding.UTF8.GetBytes($$"""
            {
              "cart": { "name": "lantern-tide", "platform": "snes", "title": "LANTERN TIDE" },
              "programs": [ { "file": "main.bin", "address": "$008000" } ],
              "header": { "mapping": "lorom", "region": "north-america" },
              "board": { "sites": [ { "site": "U1", "fill": "{{fill}}" } ], "chips": { "U1": { "part": "{{part}}" } } }
            }
            """));
        return _folder.Path;
    }
}
