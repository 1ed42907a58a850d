using Cartwright.Images;
using Cartwright.Platforms;
using Cartwright.Tests.Manifests;
using Cartwright.Tests.Oracles;
using Cartwright.Tests.Platforms;
using Xunit;

namespace Cartwright.Tests.Output;

public sealed class CartOutputTests
{
    private const string Board = "\"board\": { \"sites\": [ { \"site\": \"U1\" } ], \"chips\": { \"U1\": { \"capacity\": \"64KiB\" } } }";
    private const string Rom = "lantern-tide.rom";

    [Fact]
    public void A_build_puts_out_the_ROM_the_chips_and_the_record()
    {
        using var bench = new CartBench(Board + ", \"images\": { \"formats\": [ \"intel-hex\", \"raw\" ] }");
        var result = bench.Succeed();
        Assert.Equal([Rom, "lantern-tide.U1.hex", "lantern-tide.U1.bin", "lantern-tide.record.json"], result.Files.Select(file => file.File.Name));
        Assert.Equal(result.Files.Select(file => file.File.Name).Order(StringComparer.Ordinal), bench.Tree().Keys);
        Assert.All(result.Files, file => Assert.Equal(file.Digest, FileDigest.Of(File.ReadAllBytes(bench.In("dist/" + file.File.Name)))));
    }

    [Fact]
    public void A_container_and_the_regions_make_the_exchange_file()
    {
        using var bench = new CartBench();
        bench.Manifest("""
            { "cart": { "name": "twins", "platform": "twin" },
              "programs": [ { "file": "main.bin", "region": "prg", "offset": 0, "length": 256 }, { "file": "main.bin", "region": "chr", "offset": 4, "skip": 256 } ] }
            """);
        bench.Succeed();
        var file = File.ReadAllBytes(bench.In("dist/twins.twin"));
        var tiles = new byte[0x100];
        tiles.AsSpan().Fill(0xFF);
        "TILE"u8.CopyTo(tiles);
        TestBytes.L(0x180).AsSpan(0x100).CopyTo(tiles.AsSpan(4));
        Assert.Equal([.. "TWIN"u8, 1, 1, 0, 0, .. TestBytes.L(0x100), .. tiles], file);
    }

    [Fact]
    public void A_larger_stale_file_is_replaced_and_other_files_are_left_alone()
    {
        using var bench = new CartBench();
        bench.Write("dist/" + Rom, new byte[1 << 20]);
        bench.Write("dist/notes.txt", "mine"u8);
        bench.Succeed();
        Assert.Equal(["lantern-tide.record.json", Rom, "notes.txt"], bench.Tree().Keys);
        Assert.Equal(0x200, new FileInfo(bench.In("dist/" + Rom)).Length);
    }

    [Fact]
    public void A_build_that_gives_what_is_there_writes_nothing()
    {
        using var bench = new CartBench(Board + ", \"images\": { \"formats\": [ \"intel-hex\", \"s-record\", \"raw\" ] }");
        Assert.False(bench.Succeed().WasThere);
        var stamp = new DateTime(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc);
        foreach (var file in bench.Tree().Keys)
            File.SetLastWriteTimeUtc(bench.In("dist/" + file), stamp);

        Assert.True(bench.Succeed().WasThere);
        Assert.All(bench.Tree().Keys, file => Assert.Equal(stamp, File.GetLastWriteTimeUtc(bench.In("dist/" + file))));
    }

    [Theory]
    [InlineData(Rom)]
    [InlineData("lantern-tide.U1.bin")]
    [InlineData("lantern-tide.U1.hex")]
    [InlineData("lantern-tide.record.json")]
    public void A_file_that_is_not_what_the_build_gives_is_written_again(string name)
    {
        using var bench = new CartBench(Board + ", \"images\": { \"formats\": [ \"intel-hex\", \"raw\" ] }");
        bench.Succeed();
        var right = File.ReadAllBytes(bench.In("dist/" + name));
        foreach (var wrong in (byte[][])[[.. right[..^1], (byte)(right[^1] ^ 1)], right[..^1], [.. right, 0]])
        {
            File.WriteAllBytes(bench.In("dist/" + name), wrong);
            Assert.False(bench.Succeed().WasThere);
            Assert.Equal(right, File.ReadAllBytes(bench.In("dist/" + name)));
        }

        File.Delete(bench.In("dist/" + name));
        Assert.False(bench.Succeed().WasThere);
    }

    [Fact]
    public void A_build_with_an_error_leaves_the_earlier_files()
    {
        using var bench = new CartBench(Board);
        bench.Succeed();
        var before = bench.Tree();
        Assert.Contains("CW3003", bench.Run(ManifestText.Set(("rom:size", "0x100"))));
        Assert.Contains("CW5512", bench.Run(ManifestText.Set(("board:chips:U1:capacity", "4"))));
        Assert.Equal(before, bench.Tree());
    }

    [Fact]
    public void A_build_with_an_error_has_no_files_and_cannot_be_written()
    {
        using var bench = new CartBench("\"board\": { \"use\": \"nes-plain\" }");
        var build = bench.Build();
        Assert.True(build.HasErrors);
        Assert.NotNull(build.Cart);
        Assert.Empty(build.Files);
        Assert.Throws<ArgumentException>(() => CartOutput.Write(build));
    }

    [Fact]
    public void A_file_that_cannot_be_put_in_place_leaves_the_earlier_output()
    {
        using var bench = new CartBench();
        bench.Succeed();
        File.Delete(bench.In("dist/lantern-tide.record.json"));
        Directory.CreateDirectory(bench.In("dist/lantern-tide.record.json"));
        var before = bench.Tree();
        bench.Write("main.bin", TestBytes.L(0x100));
        Assert.Contains("CW6001", bench.Run(ManifestText.Set(("board:sites:0:site", "U1"))));
        Assert.Equal(before, bench.Tree());
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_left_alone()
    {
        using var bench = new CartBench();
        bench.Write("dist", "mine"u8);
        Assert.Contains("CW6001", bench.Run());
        Assert.Equal("mine"u8.ToArray(), File.ReadAllBytes(bench.In("dist")));
    }

    [Fact]
    public void A_folder_without_the_right_to_write_is_told()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Folder permissions are set by the mode bits of other systems.");
            return;
        }

        Assert.SkipWhen(Environment.IsPrivilegedProcess, "The superuser may write into any folder.");
        using var bench = new CartBench();
        var folder = Directory.CreateDirectory(bench.In("dist"));
        File.SetUnixFileMode(folder.FullName, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        var codes = bench.Run();
        File.SetUnixFileMode(folder.FullName, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Assert.Contains("CW6001", codes);
    }

    [Fact]
    public void A_full_disk_leaves_the_earlier_output()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "A small disk is mounted the Linux way.");
        using var bench = new CartBench(Board);
        var disk = Directory.CreateDirectory(bench.In("dist")).FullName;
        Assert.SkipUnless(Tool.Exists("mount") && Tool.Run("mount", bench.Path, "-t", "tmpfs", "-o", "size=128k", "tmpfs", disk).ExitCode == 0, "Mounting a small disk needs the superuser's rights.");
        try
        {
            bench.Succeed();
            var before = bench.Tree();
            bench.Write("main.bin", TestBytes.L(0x100));
            Assert.Contains("CW6002", bench.Run());
            Assert.Equal(before, bench.Tree());
        }
        finally
        {
            Tool.Succeed("umount", bench.Path, disk);
        }
    }

    [Fact]
    public void Two_builds_at_once_do_not_mix()
    {
        using var bench = new CartBench();
        using (OutputFolder.Open(bench.In("dist"), default, new Cartwright.Findings.FindingLog()))
            Assert.Contains("CW6003", bench.Run());

        bench.Succeed();
        Assert.Equal(2, bench.Tree().Count);
    }

    [Fact]
    public async Task Builds_that_race_for_a_folder_leave_the_output_of_one()
    {
        const int Rounds = 40;
        using var bench = new CartBench(Board);
        var speeds = new[] { "slow", "fast" };
        var whole = speeds.Select(speed =>
        {
            bench.Succeed(ManifestText.Set(("header:speed", speed)));
            return bench.Tree();
        }).ToList();
        var races = speeds.Select(speed => Task.Run(() => Enumerable.Range(0, Rounds).SelectMany(_ => bench.Run(ManifestText.Set(("header:speed", speed)))).ToList(), TestContext.Current.CancellationToken));
        var codes = (await Task.WhenAll(races)).SelectMany(told => told).Distinct();
        Assert.Empty(codes.Except(["CW5010", "CW6003"]));
        Assert.Contains(bench.Tree(), whole);
    }

    [Fact]
    public void A_killed_build_is_told_and_the_next_goes_on()
    {
        using var bench = new CartBench();
        bench.Write("dist/.cartwright-stage/old/" + Rom, "old"u8);
        Assert.Contains("CW6006", bench.Run());
        Assert.Equal(0x200, new FileInfo(bench.In("dist/" + Rom)).Length);
    }

    [Theory]
    [InlineData("dist/lantern-tide.rom", "dist")]
    [InlineData("dist/LANTERN-TIDE.ROM", "dist")]
    [InlineData("./dist/../dist/lantern-tide.rom", "./dist/")]
    [InlineData("link/lantern-tide.rom", "dist")]
    [InlineData("link.bin", "dist")]
    public void An_input_is_never_replaced(string program, string folder)
    {
        using var bench = new CartBench($"\"images\": {{ \"folder\": \"{folder}\" }}", $"{{ \"file\": \"{program}\", \"offset\": \"0x80\" }}");
        bench.Write("dist/lantern-tide.rom", TestBytes.L(0x40));
        bench.Write("dist/LANTERN-TIDE.ROM", TestBytes.L(0x40));
        Directory.CreateSymbolicLink(bench.In("link"), "dist");
        File.CreateSymbolicLink(bench.In("link.bin"), "dist/lantern-tide.rom");
        var before = bench.Tree();
        var finding = bench.Build().Findings.Single(finding => finding.Code == "CW6004");
        Assert.Equal("programs:0:file", finding.Place.Key);
        bench.Run();
        Assert.Equal(before, bench.Tree());
    }

    [Fact]
    public void An_input_is_not_replaced_through_a_link_to_the_output_folder()
    {
        using var bench = new CartBench(programs: "{ \"file\": \"src/lantern-tide.rom\", \"offset\": \"0x80\" }");
        bench.Write("src/lantern-tide.rom", TestBytes.L(0x40));
        Directory.CreateSymbolicLink(bench.In("link"), "src");
        Assert.Contains("CW6004", bench.Run(output: bench.In("link")));
        Assert.Equal(TestBytes.L(0x40), File.ReadAllBytes(bench.In("src/lantern-tide.rom")));
    }

    [Fact]
    public void The_manifest_is_an_input_too()
    {
        using var bench = new CartBench("\"images\": { \"folder\": \".\" }");
        File.Move(bench.ManifestPath, bench.In("lantern-tide.record.json"));
        var build = new CartBuilder(bench.Platforms).Build(new BuildRequest(bench.In("lantern-tide.record.json")));
        Assert.Contains("CW6004", build.Findings.Select(finding => finding.Code));
    }

    [Fact]
    public void Two_outputs_of_one_name_are_told_whatever_their_case()
    {
        using var bench = new CartBench(Board) { Platforms = new PlatformCatalog([new TestPlatform { Ending = "u1.BIN" }]) };
        Assert.Contains("CW6005", bench.Run());
        Assert.Empty(bench.Tree());
    }

    [Fact]
    public void A_dry_run_touches_nothing_and_tells_the_same()
    {
        using var bench = new CartBench(Board);
        var dry = CartOutput.Write(bench.Build(), dryRun: true);
        Assert.False(Directory.Exists(bench.In("dist")));
        Assert.Equal(dry.Files.Select(file => (file.File.Name, file.Digest)), bench.Succeed().Files.Select(file => (file.File.Name, file.Digest)));
    }

    [Theory]
    [InlineData("dist")]
    [InlineData("a/dist")]
    [InlineData("dist/b")]
    [InlineData("dist\\\\b")]
    public void An_output_folder_behind_a_link_is_refused(string folder)
    {
        using var outside = new TempFolder();
        using var bench = new CartBench($"\"images\": {{ \"folder\": \"{folder}\" }}");
        Directory.CreateDirectory(bench.In("a"));
        Directory.CreateSymbolicLink(bench.In("dist"), outside.Path);
        Directory.CreateSymbolicLink(bench.In("a/dist"), outside.Path);
        Assert.Contains("CW1010", bench.Run());
        Assert.Empty(Directory.EnumerateFileSystemEntries(outside.Path));
    }

    [Fact]
    public void A_backslash_in_the_output_folder_means_the_same_everywhere()
    {
        using var bench = new CartBench("\"images\": { \"folder\": \"a\\\\b\" }");
        bench.Succeed();
        Assert.True(File.Exists(bench.In("a/b/" + Rom)));
    }

    [Fact]
    public void Another_folder_may_be_named_for_the_files()
    {
        using var outside = new TempFolder();
        using var bench = new CartBench();
        bench.Succeed(output: outside.Path);
        Assert.Equal(2, Directory.GetFiles(outside.Path).Length);
        Assert.False(Directory.Exists(bench.In("dist")));
    }

    [Fact]
    public void The_same_inputs_give_the_same_bytes()
    {
        using var first = new CartBench(Board);
        using var second = new CartBench(Board);
        File.SetLastWriteTimeUtc(second.In("main.bin"), new DateTime(2001, 2, 3, 0, 0, 0, DateTimeKind.Utc));
        first.Succeed();
        second.Succeed();
        second.Succeed();
        Assert.Equal(3, first.Tree().Count);
        Assert.Equal(first.Tree(), second.Tree());
    }
}
