using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.Tests.Platforms;

/// <summary>An invented console with a required and an optional region, a container in front, and a header in the optional region.</summary>
internal sealed class TwoRegionPlatform : Platform
{
    private const string Source = "invented";

    public override PlatformFacts Facts { get; } = new("twin", "Two-bus console")
    {
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap = ["$8000-$FFFF prg"],
        Sources = [Source],
    };

    public override ImmutableArray<PlatformLayout> Layouts => [Make()];

    public override PlatformLayout Layout(HeaderSettings settings) => Make();

    public override string Extension(CartView cart) => "twin";

    private static PlatformLayout Make()
    {
        var container = new HeaderTable("container", null, new HeaderAnchor(0), 8,
        [
            new("mark", 0, 4, new TextCodec(0), "Mark.", Source) { Default = "TWIN" },
            new("prgUnits", 4, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Units of 256 bytes.", Source) { WorkOut = context => $"{context.LengthOf("prg") / 0x100}" },
            new("chrUnits", 5, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Units of 256 bytes.", Source) { WorkOut = context => $"{context.LengthOf("chr") / 0x100}" },
        ]);
        var picture = new HeaderTable("picture header", "chr", new HeaderAnchor(0), 4, [new("tiles", 0, 4, new TextCodec(0), "Tiles.", Source) { Default = "TILE" }]);
        return new PlatformLayout(
            "twin",
            [new RegionRule("prg", SizeRule.PowersOfTwo(0x100, 0x1000), "code"), new RegionRule("chr", SizeRule.PowersOfTwo(0x100, 0x400), "tiles") { Required = false }],
            [container, picture],
            new NoAddresses());
    }

    private sealed class NoAddresses : AddressMap
    {
        public override string Forms => "no address; use `offset`";

        public override AddressPlace Locate(ConsoleAddress address, Func<string, long?> statedSize) => AddressPlace.Nowhere("this console has none");
    }
}
