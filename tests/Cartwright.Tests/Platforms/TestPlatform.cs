using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.Tests.Platforms;

/// <summary>An invented console with one region and a header that has a field of every kind, so that tests of the core need no real one.</summary>
internal sealed class TestPlatform : Platform
{
    public const int HeaderLength = 0x20;
    public const int LowStart = 0x10;
    public const long Smallest = 0x100;
    public const long Largest = 0x10000;

    private const string Source = "invented";

    private static readonly BytesPlacement TwoBytes = new(2, ByteOrder.BigEndian);

    public override PlatformFacts Facts { get; } = new("bench", "Test bench console")
    {
        Aliases = ["workbench"],
        BusWidth = 8,
        ByteOrder = ByteOrder.BigEndian,
        BusVolts = 5,
        MemoryMap = ["$8000-$80FF ROM, one window"],
        Sources = [Source],
    };

    /// <summary>Ending of the exchange file.</summary>
    public string Ending { get; init; } = "rom";

    public override ImmutableArray<PlatformOption> Options =>
        [new("mapping", [new(0, "low"), new(1, "high")], "low", "Where the header lies.", Source)];

    public override ImmutableArray<PlatformLayout> Layouts => [Make("low"), Make("high")];

    public override PlatformLayout Layout(HeaderSettings settings) => Make(Word(settings, Options[0]));

    public override string Extension(CartView cart) => Ending;

    /// <summary>The header's table where it lies low.</summary>
    public static HeaderTable Table => Make("low").Headers[0];

    /// <summary>The sum of all bytes but the checksum's own two.</summary>
    public static ulong Sum(ReadOnlySpan<byte> region, int start)
    {
        var sum = 0UL;
        for (var i = 0; i < region.Length; i++)
            sum += i == start + 0x1E || i == start + 0x1F ? 0UL : region[i];

        return sum & 0xFFFF;
    }

    private static PlatformLayout Make(string mapping)
    {
        var anchor = mapping == "high" ? new HeaderAnchor(HeaderLength, FromEnd: true) : new HeaderAnchor(LowStart);
        var table = new HeaderTable("bench header", "rom", anchor, HeaderLength, Fields)
        {
            Checksums = [new("checksum", 0x1E, 2, ByteOrder.BigEndian, region => Sum(region, anchor.In(region.Length)), "the sum of all other bytes", Source)],
        };
        return new PlatformLayout(mapping, [new RegionRule("rom", SizeRule.PowersOfTwo(Smallest, Largest), "everything")], [table], new TestAddresses());
    }

    private static ImmutableArray<HeaderField> Fields { get; } =
    [
        new("title", 0, 12, new TextCodec(0x20), "Title.", Source) { FromCart = CartKey.Title, Required = true },
        new("revision", 12, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal), "Revision.", Source) { FromCart = CartKey.Revision, Default = "0" },
        new("battery", 13, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 0, 1)), NamedValues.Truth), "Battery.", Source) { Default = "false" },
        new("speed", 13, 1, new NumberCodec(new BitsPlacement(new BitSlice(0, 4, 2)), new NamedValues(new(0, "slow"), new(1, "fast"), new(2, "turbo"))), "Speed.", Source) { Default = "slow" },
        new("romSize", 14, 1, new NumberCodec(BytesPlacement.Byte, new SizeCode([.. Enumerable.Range(0, 9).Select(code => ((ulong)code + 1, Smallest << code))])), "Size.", Source)
        {
            WorkOut = context => ByteSize.Format(context.LengthOf("rom")),
        },
        new("saveRam", 15, 1, new NumberCodec(BytesPlacement.Byte, new SizeCode((0UL, 0L), (3UL, 8L << 10), (5UL, 32L << 10))), "Save RAM.", Source) { Default = "none" },
        new("maker", 16, 2, new BytesCodec(2), "Maker.", Source),
        new("entry", 18, 2, new NumberCodec(TwoBytes, new PlainNumber(4)), "Entry address.", Source) { When = context => context["battery"] == "true" },
    ];
}
