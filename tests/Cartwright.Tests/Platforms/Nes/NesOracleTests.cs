using Cartwright.Tests.Oracles;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>Compares with what file, by libmagic's own table, makes of the exchange file.</summary>
public sealed class NesOracleTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("cartwright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void An_ines_file() =>
        Assert.Equal("NES ROM image (iNES): 2x16k PRG, 1x8k CHR [V-mirror]", File(Clean().Header("container", "ines").Header("mirroring", "vertical-mirroring")));

    [Fact]
    public void A_nes_2_file_with_save_ram() =>
        Assert.Equal("NES ROM image (iNES) (NES 2.0): 16x16k PRG, 16x8k CHR [H-mirror] [SRAM] [NTSC]", File(Bench("mmc1", 256 * K, 128 * K).Header("prgSaveRam", "8KiB")));

    private string File(RomBench bench)
    {
        Tool.Require("file");
        System.IO.File.WriteAllBytes(Path.Combine(_folder, "lantern-tide.nes"), Exchange(bench.Assemble()));
        return Tool.Run("file", _folder, "--brief", "lantern-tide.nes").Output.Trim();
    }
}
