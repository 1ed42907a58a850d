using Cartwright.Platforms;
using Cartwright.Platforms.Nes;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>What a header says, stated again for the same programs, gives the same bytes.</summary>
public sealed class RoundTripTests
{
    private static readonly string[] Sizes = ["0", "128", "2KiB", "8KiB", "32KiB", "2MiB"];

    [Property(MaxTest = 300)]
    public void Nes_2(int seed)
    {
        var pick = new Random(seed);
        var submapper = pick.Next(16);
        var bench = Random(pick, submapper).Header("submapper", submapper.ToString());
        foreach (var field in new[] { "prgRam", "prgSaveRam", "chrRam", "chrSaveRam" })
            if (pick.Next(2) == 0)
                bench.Header(field, Sizes[pick.Next(Sizes.Length)]);

        bench.Header("timing", Name(NesNames.Timing, pick)).Header("defaultExpansionDevice", Name(NesNames.ExpansionDevice, pick)).Header("miscellaneousRoms", pick.Next(4).ToString());
        if (pick.Next(3) == 0)
            bench.Header("consoleType", "vs-system").Header("vsPpu", Name(NesNames.VsPpu, pick)).Header("vsHardware", Name(NesNames.VsHardware, pick));
        else if (pick.Next(3) == 0)
            bench.Header("consoleType", "extended").Header("extendedConsole", Name(NesNames.ExtendedConsole, pick));

        Again(bench.Assemble(), "nes2");
    }

    [Property(MaxTest = 300)]
    public void Ines(int seed)
    {
        var pick = new Random(seed);
        var bench = Random(pick, null).Header("container", "ines").Header("timing", Name(NesNames.OlderTiming, pick)).Header("consoleType", Name(NesNames.OlderConsole, pick));
        if (pick.Next(2) == 0)
            bench.Header("prgRam", $"{8 * pick.Next(1, 256)}KiB");
        else if (pick.Next(2) == 0)
            bench.Header("battery", "true").Header("prgRamUnits", pick.Next(256).ToString());

        Again(bench.Assemble(), "ines");
    }

    [Property(MaxTest = 300)]
    public void Any_16_bytes_of_ines_are_written_again(int seed)
    {
        // Sizes follow from the programs, and a trainer there never is.
        var bytes = new byte[16];
        new Random(seed).NextBytes(bytes);
        "NES\x1A\x02\x01"u8.CopyTo(bytes);
        bytes[6] &= 0xFB;
        bytes[7] &= 0xF3;
        var bench = new RomBench(new NesPlatform()).Header("container", "ines").Program("prg", 0, Prg(32 * K)).Program("chr", 0, TestBytes.L(8 * K));
        foreach (var entry in Read(OlderNesHeader.Table, bytes).Entries)
            bench.Header(entry.Field.Name, entry.Text);

        Assert.Equal(bytes, bench.Assemble().Headers[0].Container);
    }

    private static RomBench Random(Random pick, int? submapper)
    {
        var row = NesMappers.All.Where(row => row.Submapper is null).ElementAt(pick.Next(NesMappers.All.Count(row => row.Submapper is null)));
        var known = pick.Next(4) > 0;
        var mapper = known ? row.Name : $"{(submapper is null ? 100 : 1000) + pick.Next(10)}";
        var prg = known ? (int)Math.Min(NesMappers.Find(row.Number, submapper ?? 0)!.PrgMax, 512 * K) >> pick.Next(2) : pick.Next(1, 9) * (submapper is null ? 16 : 8) * K;
        var words = row.Number switch
        {
            30 when known => NesNames.Mirroring30,
            218 when known => NesNames.Mirroring218,
            _ => NesNames.Mirroring,
        };
        return Bench(mapper, Math.Max(prg, 16 * K), pick.Next(2) * 8 * K).Header("mirroring", Name(words, pick));
    }

    private static string Name(Cartwright.Headers.NamedValues list, Random pick) => list.Names[pick.Next(list.Names.Length)].Name;

    private static void Again(CartView cart, string container)
    {
        var header = cart.Headers[0];
        Assert.Same(header.Table, NesImageMap.Read(Exchange(cart))!.Table);
        var bench = new RomBench(new NesPlatform()).Header("container", container);
        foreach (var region in cart.Rom.Regions)
            bench.Program(region.Name, 0, region.Bytes.ToArray()).Size(region.Name, region.Length);
        foreach (var entry in Read(header.Table, header.Container.AsSpan()).Entries)
            bench.Header(entry.Field.Name, entry.Text);

        Assert.Equal(Exchange(cart), Exchange(bench.Assemble()));
    }
}
