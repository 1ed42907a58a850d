using System.Collections.Immutable;
using Cartwright.Chips;
using Cartwright.Plans;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Plans;

/// <summary>Carries plans out on simulated cells.</summary>
public sealed class WritePlanTests
{
    // In bytes: above it few sectors are changed, as the simulation takes its time for each byte.
    private const int LargeChip = 4 << 20;

    public static TheoryData<string> Maps => [.. PartCatalog.BuiltIn.All
        .Where(static part => !part.Sectors.Map.IsEmpty)
        .DistinctBy(static part => (SectorMapText.Format(part.Sectors.Map), WriteTarget.MethodOf(part, part.Sectors.Map)))
        .Select(static part => part.Name)];

    [Theory]
    [MemberData(nameof(Maps))]
    public void A_chip_that_a_plan_was_carried_out_on_holds_the_new_contents_and_nothing_was_erased_in_vain(string name)
    {
        var part = PartCatalog.BuiltIn.Find(name)!;
        foreach (var end in new[] { BootEnd.Bottom, BootEnd.Top })
        {
            var map = part.Sectors.Map.Length > 1 ? PartVariant.MapOf(part, end) : part.Sectors.Map;
            var target = WriteTarget.Of(part, map, part.DataBus == PartDataBus.Eight ? 8 : 16);
            var random = new Random(map.Length + (int)end);
            var old = new byte[part.CapacityBytes];
            random.NextBytes(old.AsSpan(0, old.Length / 2));
            old.AsSpan(old.Length / 2).Fill(0xFF);
            CarryOut(target, old, Changed(old, target.Map, random));
            if (part.Sectors.Map.Length == 1)
            {
                return;
            }
        }
    }

    [Property]
    public void Small_chips_of_any_contents_too(byte[] held, byte[] wanted, bool isWide)
    {
        var size = Math.Max(2, Math.Min(held.Length, wanted.Length) / 2 * 2);
        var (old, target) = (new byte[size * 3], new byte[size * 3]);
        for (var i = 0; i < target.Length; i++)
        {
            old[i] = held.Length == 0 ? (byte)0 : held[i % held.Length];
            target[i] = i % 3 == 0 || wanted.Length == 0 ? old[i] : wanted[i % wanted.Length];
        }

        var map = ImmutableArray.Create(new SectorGroup(1, size), new SectorGroup(1, size * 2));
        CarryOut(new WriteTarget(DescribedPart.Of("own", size * 3, PartDataBus.Selectable, null, map), map, isWide ? 16 : 8, WriteMethod.Sectors), old, target);
    }

    [Theory]
    [InlineData("AT28C256")]
    [InlineData("AT28C16")]
    [InlineData("24C16")]
    [InlineData("93C46")]
    [InlineData("FM1808")]
    public void Parts_without_an_erase_are_overwritten_where_they_differ(string name)
    {
        var part = PartCatalog.BuiltIn.Find(name)!;
        var target = PlanChecks.Target(part, name, PlanOptions.None, default, new Cartwright.Findings.FindingLog())!;
        var old = new byte[part.CapacityBytes];
        var wanted = new byte[part.CapacityBytes];
        (wanted[3], wanted[70], wanted[71]) = (1, 2, 0xFF);
        var plan = WritePlanner.Plan(target, old, wanted);
        Assert.Equal((WriteMethod.InPlace, 0, 0), (target.Method, plan.Count(WriteAction.Erase), plan.Count(WriteAction.Program)));
        Assert.Equal(target.UnitBytes == 2 ? 2 : 3, plan.Programmed);
        Assert.All(plan.Steps, step => Assert.Equal(step.Action == WriteAction.Keep, !wanted.AsSpan(step.Start, step.Length).ContainsAnyExcept((byte)0)));
    }

    [Fact]
    public void Contents_of_another_length_than_the_map_are_refused()
    {
        var target = WriteTarget.Of(PartCatalog.BuiltIn.Find("SST39SF010A")!, [new SectorGroup(32, 4096)], 8);
        Assert.Throws<ArgumentException>(() => WritePlanner.Plan(target, new byte[131072], new byte[131071]));
        Assert.Throws<ArgumentException>(() => WritePlanner.Plan(target, new byte[4096], new byte[4096]));
        Assert.Throws<ArgumentException>(() => WritePlanner.Plan(target with { Map = [new SectorGroup(1, 3), new SectorGroup(1, 131069)], Width = 16 }, new byte[131072], new byte[131072]));
    }

    // Same, cleared bits only, a byte that must rise, or anything, sector by sector.
    private static byte[] Changed(byte[] old, ImmutableArray<SectorGroup> map, Random random)
    {
        var wanted = old.ToArray();
        var start = 0;
        var seldom = old.Length > LargeChip ? 64 : 8;
        foreach (var size in map.SelectMany(static group => Enumerable.Repeat(group.Bytes, group.Count)))
        {
            var sector = wanted.AsSpan(start, size);
            switch (random.Next(seldom))
            {
                case 0:
                    for (var i = 0; i < 40; i++) sector[random.Next(size)] &= (byte)random.Next(256);
                    break;
                case 1:
                    sector[random.Next(size)] ^= (byte)(1 << random.Next(8));
                    break;
                case 2:
                    random.NextBytes(sector[..(size / 2)]);
                    break;
                case 3:
                    sector.Fill(0xFF);
                    break;
            }

            start += size;
        }

        return wanted;
    }

    private static void CarryOut(WriteTarget target, byte[] old, byte[] wanted)
    {
        var plan = WritePlanner.Plan(target, old, wanted);
        var chip = new FlashCells(old);
        var next = 0;
        foreach (var step in plan.Steps)
        {
            Assert.Equal(next, step.Start);
            next = step.End;
            CarryOut(step, target, chip, old, wanted);
        }

        Assert.Equal(wanted.Length, next);
        Assert.True(chip.Holds(wanted));
        Assert.Equal(plan.Count(WriteAction.Erase) + (target.Method == WriteMethod.Pages ? plan.Count(WriteAction.Rewrite) : 0), chip.Erases);
    }

    private static void CarryOut(WriteStep step, WriteTarget target, FlashCells chip, byte[] old, byte[] wanted)
    {
        if (old.AsSpan(step.Start, step.Length).SequenceEqual(wanted.AsSpan(step.Start, step.Length)))
        {
            Assert.Equal(new WriteStep(step.Start, step.Length, WriteAction.Keep, 0, 0, 0), step);
            return;
        }

        var (rises, different, units, notBlank) = (false, 0, 0, 0);
        for (var address = step.Start; address < step.End; address += target.UnitBytes)
        {
            var (unitDiffers, unitIsBlank) = (false, true);
            for (var at = address; at < address + target.UnitBytes; at++)
            {
                rises |= (wanted[at] | old[at]) != old[at];
                unitDiffers |= wanted[at] != old[at];
                unitIsBlank &= wanted[at] == 0xFF;
            }

            different += unitDiffers ? 1 : 0;
            notBlank += unitIsBlank ? 0 : 1;
            units++;
        }

        var programmed = step.Action switch { WriteAction.Erase => notBlank, WriteAction.Rewrite => units, _ => different };
        Assert.Equal((different, programmed), (step.Changed, step.Programmed));
        Assert.Equal(target.Method == WriteMethod.Pages ? WriteAction.Rewrite : rises ? WriteAction.Erase : WriteAction.Program, step.Action);
        switch (step.Action)
        {
            case WriteAction.Rewrite:
                chip.WritePage(step.Start, wanted, step.Length);
                break;
            case WriteAction.Erase:
                chip.Erase(step.Start, step.Length);
                goto case WriteAction.Program;
            case WriteAction.Program:
                for (var address = step.Start; address < step.End; address++)
                {
                    if (chip[address] != wanted[address]) chip.Program(address, wanted[address]);
                }

                break;
        }
    }
}
