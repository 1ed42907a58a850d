using Cake.Core;
using Cake.Core.Diagnostics;
using Cartwright.Cake;
using Xunit;

namespace Cartwright.Packages.Tests.Aliases;

/// <summary>The aliases as a compiled Cake project calls them.</summary>
public sealed class AliasTests : IDisposable
{
    private readonly Bench _bench = new();
    private readonly string _manifest;
    private readonly CompiledContext _context;

    public AliasTests()
    {
        _manifest = _bench.CopyCart("lantern-tide-gb");
        _context = new CompiledContext(_bench.Folder);
    }

    private IEnumerable<(Verbosity, LogLevel)> Told(string code) =>
        _context.Recorded.Lines.Where(line => line.Text.Contains($" {code}: ", StringComparison.Ordinal)).Select(static line => (line.Verbosity, line.Level));

    [Fact]
    public void Paths_are_relative_to_the_working_folder_of_cake_and_not_of_the_process()
    {
        var cart = _context.CartBuild("cart.json");
        OwnBuild.Equal(_manifest, _bench.At("dist"));
        Assert.Equal(_bench.At("dist"), cart.Build.OutputFolder);
        Assert.Equal(_bench.At("other"), _context.CartBuild("cart.json", new CartSettings { OutputFolder = "other" }).Build.OutputFolder);
        Assert.True(Directory.Exists(_bench.At("other")));
    }

    [Fact]
    public void A_dry_run_writes_nothing()
    {
        Assert.Equal(3, _context.CartBuild("cart.json", new CartSettings { DryRun = true }).Output.Files.Length);
        Assert.False(Directory.Exists(_bench.At("dist")));
    }

    [Fact]
    public void Variables_of_the_build_count_and_settings_go_before_them()
    {
        _context.Variables["CARTWRIGHT__cart__revision"] = "3";
        _context.Variables["CARTWRIGHT__cart__name"] = "variable";
        var cart = _context.CartBuild("cart.json", new CartSettings { Settings = new Dictionary<string, string> { ["cart:name"] = "setting" } });
        Assert.Equal(("setting", "3"), (cart.Build.Manifest!.Cart.Name.Text, cart.Build.Manifest.Cart.Revision!.Text));
    }

    [Fact]
    public void Warnings_and_notes_are_logged_at_their_levels_and_fail_nothing()
    {
        _context.CartBuild("cart.json", new CartSettings { Settings = new Dictionary<string, string> { ["board:chips:U1:part"] = "SST39VF040", ["header:destination"] = "0x33" } });
        Assert.Equal([(Verbosity.Minimal, LogLevel.Warning)], Told("CW5503"));
        Assert.Equal([(Verbosity.Normal, LogLevel.Information)], Told("CW4217"));
    }

    [Fact]
    public void An_error_is_logged_at_every_verbosity_and_fails_the_task_with_nothing_written()
    {
        var fault = Assert.Throws<CakeException>(() => _context.CartBuild("cart.json", new CartSettings { Settings = new Dictionary<string, string> { ["header:destination"] = "{nowhere}" } }));
        Assert.Equal([(Verbosity.Quiet, LogLevel.Error)], Told("CW4003"));
        Assert.StartsWith("cart.json: 1 error, the first: `{nowhere}`", fault.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_bench.At("dist")));
    }

    [Fact]
    public void What_is_wrong_with_an_image_fails_the_task()
    {
        Assert.Throws<CakeException>(() => _context.CartExamine("nothing.gb"));
        Assert.Equal(Verbosity.Quiet, Assert.Single(_context.Recorded.Lines).Verbosity);
        Assert.Contains("no platform `gameboi`", Assert.Throws<CakeException>(() => _context.CartExamine("nothing.gb", new ImageSettings { Platform = "gameboi" })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_checksum_to_mend_fails_the_task()
    {
        _context.CartBuild("cart.json");
        Assert.Throws<CakeException>(() => _context.CartMend("dist/lantern-tide-gb.gb", "mended.gb", new ImageSettings { Also = ["globalChecksums"] }));
        Assert.False(File.Exists(_bench.At("mended.gb")));
    }

    [Fact]
    public void An_equal_read_back_is_proved_and_its_report_returned()
    {
        _context.CartBuild("cart.json");
        File.Copy(_bench.At("dist", "lantern-tide-gb.U1.bin"), _bench.At("read.bin"));
        Assert.True(_context.CartProve("dist/lantern-tide-gb.record.json", ["read.bin"]).IsEqual);
        Assert.EndsWith("U1 is equal", _context.Recorded.Lines[^1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_read_back_that_differs_fails_the_task_with_the_line_unless_it_may()
    {
        _context.CartBuild("cart.json");
        File.WriteAllBytes(_bench.At("read.bin"), [.. File.ReadAllBytes(_bench.At("dist", "lantern-tide-gb.U1.bin")).Select(static value => (byte)(value | 0x20))]);
        var fault = Assert.Throws<CakeException>(() => _context.CartProve("dist/lantern-tide-gb.record.json", ["read.bin"], new ProveSettings { Site = "U1" }));
        Assert.EndsWith("U1 is not equal. U1, D5: the data line reads high all the time.", fault.Message, StringComparison.Ordinal);
        Assert.Equal((Verbosity.Quiet, LogLevel.Error), (_context.Recorded.Lines[^1].Verbosity, _context.Recorded.Lines[^1].Level));
        Assert.False(_context.CartProve("dist/lantern-tide-gb.record.json", ["read.bin"], new ProveSettings { FailOnDifference = false }).IsEqual);
        Assert.Equal(LogLevel.Warning, _context.Recorded.Lines[^1].Level);
    }

    [Fact]
    public void What_cannot_be_proved_fails_the_task()
    {
        _context.CartBuild("cart.json");
        Assert.Throws<CakeException>(() => _context.CartProve("dist/lantern-tide-gb.record.json", []));
        Assert.Equal([(Verbosity.Quiet, LogLevel.Error)], Told("CW9015"));
        Assert.Contains("one number for each", Assert.Throws<CakeException>(() => _context.CartProve("cart.json", ["read.bin"], new ProveSettings { Insertions = [1, 2] })).Message, StringComparison.Ordinal);
    }

    public void Dispose() => _bench.Dispose();
}
