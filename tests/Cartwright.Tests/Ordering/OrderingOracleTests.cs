using Cartwright.Ordering;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Ordering;

/// <summary>Compares with GNU objcopy and, for the 16-bit swap, with dd.</summary>
public sealed class OrderingOracleTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("cartwright-").FullName;
    private readonly byte[] image = TestBytes.L(0x20000);

    public OrderingOracleTests() => File.WriteAllBytes(Path.Combine(folder, "image.bin"), image);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData(0, 2)]
    [InlineData(1, 2)]
    [InlineData(0, 4)]
    [InlineData(1, 4)]
    [InlineData(2, 4)]
    [InlineData(3, 4)]
    public void A_lane_is_what_objcopy_interleaves(int lane, int lanes)
    {
        var part = new byte[image.Length / lanes];
        Lanes.Split(image, lane, lanes, part);
        Assert.Equal(Objcopy($"--interleave={lanes}", $"--byte={lane}"), part);
    }

    [Fact]
    public void A_16_bit_swap_is_what_objcopy_reverses()
    {
        WordSwap.Swap16(image);
        Assert.Equal(Objcopy("--reverse-bytes=2"), image);
    }

    [Fact]
    public void A_32_bit_swap_is_what_objcopy_reverses()
    {
        WordSwap.Swap32(image);
        Assert.Equal(Objcopy("--reverse-bytes=4"), image);
    }

    [Fact]
    public void A_16_bit_swap_is_what_dd_swaps()
    {
        WordSwap.Swap16(image);
        Assert.Equal(Output("dd", "if=image.bin", "of=out.bin", "conv=swab", "bs=4096"), image);
    }

    private byte[] Objcopy(params string[] options) =>
        Output("objcopy", ["-I", "binary", "-O", "binary", .. options, "image.bin", "out.bin"]);

    private byte[] Output(string tool, params string[] arguments)
    {
        Tool.Require(tool);
        var result = Tool.Run(tool, folder, arguments);
        Assert.True(result.ExitCode == 0, result.Error);
        return File.ReadAllBytes(Path.Combine(folder, "out.bin"));
    }
}
