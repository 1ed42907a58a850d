using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.Tests.Documents;

/// <summary>An invented platform with one of everything a page can show: two layouts that differ in little, bits, words, a container, checksums.</summary>
internal sealed class SamplePlatform : Platform
{
    private const string Source = "Sample handbook";

    private static HeaderTable Container { get; } = new("sample container", null, new HeaderAnchor(0), 4,
        [new("mark", 0, 4, new BytesCodec(4), "The mark.", Source)]);

    public static PlatformCatalog Catalog { get; } = new([new SamplePlatform()]);

    public override PlatformFacts Facts { get; } = new("sample", "Sample Console")
    {
        Aliases = ["smp"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 3.3,
        MemoryMap = ["$8000-$FFFF ROM"],
        Traps = ["Chips exchanged."],
        Sources = [Source],
    };

    public override ImmutableArray<FindingRule> Findings { get; } =
        [new("CW4990", FindingSeverity.Note, "Sample finding", "It matters.", "Do something.")];

    public override ImmutableArray<PlatformOption> Options { get; } =
        [new("wiring", [new NamedValue(0, "low", "at the start"), new NamedValue(1, "high")], "low", "How it is wired.", Source)];

    public override ImmutableArray<PlatformLayout> Layouts { get; } = [Make("low", 0x100, "1"), Make("high", 0x8100, "2")];

    public override PlatformLayout Layout(HeaderSettings settings) => Layouts.First(layout => layout.Variant == Word(settings, Options[0]));

    public override string Extension(CartView cart) => "smp";

    // A program that begins with the sample's mark the wrong way round.
    public override ImageOrder OrderOf(ReadOnlySpan<byte> program) => program.StartsWith("AS"u8) ? ImageOrder.ByteSwapped : ImageOrder.Console;

    private static PlatformLayout Make(string variant, int start, string revision) => new(
        variant,
        [new RegionRule("prg", SizeRule.PowersOfTwo(1 << 15, 1 << 17), "the program") { Required = start == 0x100 }],
        [Inner(start, revision), Container],
        new SampleAddresses());

    private static HeaderTable Inner(int start, string revision) => new("sample header", "prg", new HeaderAnchor(start), 0x20,
    [
        new("title", 0x00, 16, new TextCodec(0x20), "The title.", Source) { FromCart = CartKey.Title, Required = true },
        new("speed", 0x10, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 4, 1)), new NamedValues(new(0, "slow", "200 ns"), new(1, "fast", "120 ns"))), "Speed | grade.", Source) { Default = "slow" },
        new("battery", 0x10, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 0, 2), new BitSlice(0, 7, 1)), NamedValues.Truth), "Whether there is a battery.", Source) { Default = "false" },
        new("romSize", 0x11, 1, new NumberCodec(BytesPlacement.Byte, new SizeCode((0UL, 1L << 15), (1UL, 1L << 16))), "Size.", Source) { WorkOut = static context => $"{context.LengthOf("prg")}" },
        new("revision", 0x12, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "The revision.", Source) { FromCart = CartKey.Revision, Default = revision },
        new("spare", 0x13, 2, new BytesCodec(2), "Not used.", Source) { When = static context => context["speed"] == "fast" },
    ])
    {
        Checksums =
        [
            new("sum", 0x1E, 2, ByteOrder.LittleEndian, static _ => 0, "sum of all bytes", Source) { Enforced = true, Covers = ["other"] },
        ],
    };

    private sealed class SampleAddresses : AddressMap
    {
        public override string Forms => "an address such as $8000";

        public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize) => AddressPlace.Nowhere("it is a sample");
    }
}
