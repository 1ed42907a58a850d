using System.Globalization;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Patching;

/// <summary>Compares with xdelta3, a general-purpose delta tool: it makes and we apply, tests make and both apply.</summary>
public sealed class VcdiffOracleTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("cartwright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("-S", "none")]
    [InlineData("-S", "none", "-n")]
    [InlineData("-S", "none", "-A=")]
    [InlineData("-S", "none", "-0")]
    [InlineData("-S", "none", "-9")]
    [InlineData("-S", "none", "-W", "16384")]
    [InlineData("-S", "none", "-n", "-W", "16384", "-B", "524288")]
    public void What_it_makes_we_apply(params string[] options)
    {
        Tool.Require("xdelta3");
        var random = new Random(7);
        for (var round = 0; round < 4; round++)
        {
            var (image, target) = Pair(random);
            Write("base.bin", image);
            Write("target.bin", target);
            Tool.Succeed("xdelta3", _folder, ["-e", "-f", .. options, "-s", "base.bin", "target.bin", "fix.vcdiff"]);
            Assert.True(target.AsSpan().SequenceEqual(PatchBench.Output(image, Read("fix.vcdiff"))), string.Create(CultureInfo.InvariantCulture, $"round {round}"));
            Tool.Succeed("xdelta3", _folder, ["-e", "-f", .. options, "target.bin", "alone.vcdiff"]);
            Assert.True(target.AsSpan().SequenceEqual(PatchBench.Output([], Read("alone.vcdiff"))));
        }
    }

    [Theory]
    [InlineData("lzma")]
    [InlineData("djw")]
    [InlineData("fgk")]
    public void Secondary_compression_is_refused(string compressor)
    {
        Tool.Require("xdelta3");
        Write("target.bin", [.. TestBytes.L(40000).Select(value => (byte)(value & 7))]);
        if (Tool.Run("xdelta3", _folder, "-e", "-f", "-S", compressor, "target.bin", "fix.vcdiff").ExitCode != 0) Assert.Skip($"This xdelta3 has no {compressor}.");
        Assert.Equal(["CW7021"], PatchBench.Apply([], Read("fix.vcdiff")).Codes);
    }

    // xdelta3 follows no window whose segment is a part of the target.
    [Fact]
    public void What_the_tests_make_it_applies_as_we_do()
    {
        Tool.Require("xdelta3");
        var random = new Random(8);
        for (var round = 0; round < 60; round++)
        {
            var image = RandomPatches.Bytes(random, random.Next(1, 0x400));
            var builder = new VcdiffBuilder(random, image);
            if (round % 3 == 0) builder.Text("tide");
            for (var left = random.Next(1, 4); left > 0; left--) builder.Window(random.Next(2), hasAdler: left == 1);
            if (builder.Output.Length == 0) continue;
            Write("base.bin", image);
            Write("fix.vcdiff", builder.Patch);
            Tool.Succeed("xdelta3", _folder, "-d", "-f", "-s", "base.bin", "fix.vcdiff", "out.bin");
            Assert.Equal(Read("out.bin"), PatchBench.Output(image, builder.Patch));
        }
    }

    private static (byte[] Image, byte[] Target) Pair(Random random)
    {
        var image = RandomPatches.Bytes(random, random.Next(1000, 200_000));
        var half = random.Next(image.Length);
        var target = new List<byte>([.. image.AsSpan(half), .. RandomPatches.Bytes(random, 300), .. TestBytes.All(0xFF, random.Next(70_000)), .. image.AsSpan(0, half)]);
        for (var left = 50; left > 0; left--) target[random.Next(target.Count)] ^= 0x10;
        return (image, [.. target]);
    }

    private void Write(string name, byte[] bytes) => File.WriteAllBytes(Path.Combine(_folder, name), bytes);

    private byte[] Read(string name) => File.ReadAllBytes(Path.Combine(_folder, name));
}
