using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class PinOutTests
{
    private static readonly PinOutCatalog Catalog = PinOutCatalog.BuiltIn;

    // Pin lists of the data sheets of each part; of the AT49F040 for the 39SF040.
    [Theory]
    [InlineData("M27C512", "DIP28", "A15", 1)]
    [InlineData("M27C512", "DIP28", "A14", 27)]
    [InlineData("M27C512", "DIP28", "VPP", 22)]
    [InlineData("AT28C256", "DIP28", "A14", 1)]
    [InlineData("AT28C256", "SO28", "WE#", 27)]
    [InlineData("SST39SF040", "DIP32", "A12", 4)]
    [InlineData("SST39SF040", "PLCC-32", "A18", 1)]
    [InlineData("SST39SF040", "dip", "WE#", 31)]
    [InlineData("NM27C040", "DIP32", "A18", 31)]
    [InlineData("M27C801", "DIP32", "OE#", 24)]
    [InlineData("M27C160", "DIP42", "A-1", 30)]
    [InlineData("M27C160", "DIP42", "D15", 30)]
    [InlineData("M27C322", "DIP42", "A20", 32)]
    [InlineData("M29W400B", "SO44", "D8", 16)]
    [InlineData("M29W400B", "SO44", "BYTE#", 33)]
    public void A_line_of_a_part_in_a_package_is_a_pin(string part, string package, string signal, int pin) =>
        Assert.Equal(PinOf(part, package, signal), pin);

    [Theory]
    [InlineData("SST39SF040", "DIP32", "A19")]
    [InlineData("SST39SF040", "DIP32", "A-1")]
    [InlineData("SST39SF040", "DIP28", "A0")]
    [InlineData("93C46", "SO8", "DI")]
    public void What_a_part_does_not_have_is_no_pin(string part, string package, string signal) => Assert.Null(PinOf(part, package, signal));

    [Theory]
    [InlineData("DIP32-39SF040", 4, 3, 5)]
    [InlineData("DIP32-39SF040", 1, 2, 0)]
    [InlineData("DIP32-39SF040", 16, 15, 0)]
    [InlineData("DIP32-39SF040", 32, 31, 0)]
    [InlineData("TSOP48-29F400", 24, 23, 0)]
    [InlineData("PLCC32-39SF040", 1, 2, 32)]
    [InlineData("PLCC32-39SF040", 4, 3, 0)]
    [InlineData("PLCC32-39SF040", 5, 6, 0)]
    [InlineData("PLCC32-39SF040", 13, 12, 0)]
    [InlineData("PLCC32-39SF040", 20, 19, 0)]
    [InlineData("PLCC32-39SF040", 29, 28, 0)]
    [InlineData("PLCC44-27C160", 6, 5, 0)]
    [InlineData("PLCC44-27C160", 17, 16, 0)]
    [InlineData("PLCC44-27C160", 44, 1, 43)]
    public void Neighbours_are_the_pins_beside_it_on_its_side(string pinOut, int pin, int first, int second) =>
        Assert.Equal(second == 0 ? [first] : [first, second], Catalog.Find(pinOut)!.Neighbours(pin));

    [Fact]
    public void Being_a_neighbour_is_mutual_and_no_end_of_a_side_has_two() => Assert.All(Catalog.All, pinOut =>
    {
        var ends = 0;
        for (var pin = 1; pin <= pinOut.PinCount; pin++)
        {
            var neighbours = pinOut.Neighbours(pin);
            ends += neighbours.Length == 1 ? 1 : 0;
            Assert.All(neighbours, other => Assert.Contains(pin, pinOut.Neighbours(other)));
        }

        Assert.Equal(pinOut.Package.StartsWith("PLCC", StringComparison.Ordinal) ? 8 : 4, ends);
    });

    [Theory]
    [InlineData("DIP32-39SF040", 12, 8, "A12")]
    [InlineData("TSOP48-29F400", 0, 16, "A0")]
    [InlineData("TSOP48-29F400", 0, 8, "D15/A-1")]
    [InlineData("TSOP48-29F400", 1, 8, "A0")]
    [InlineData("TSOP56-28F320J3", 0, 8, "A0")] // A0 is their byte address
    [InlineData("TSOP56-28F320J3", 0, 16, "A1")]
    [InlineData("DIP42-27C322", 0, 16, "A0")]
    public void A_bit_of_the_address_is_a_line_by_width(string name, int bit, int width, string signal)
    {
        var pinOut = Catalog.Find(name)!;
        Assert.Equal(signal, pinOut.SignalAt(pinOut.PinOfAddress(bit, width)!.Value));
    }

    [Fact]
    public void A_part_without_a_byte_mode_has_no_lowest_byte_line() => Assert.Null(Catalog.Find("DIP42-27C322")!.PinOfAddress(0, 8));

    [Fact]
    public void Every_bit_of_every_address_of_a_part_has_a_pin_and_no_more() => Assert.All(PartCatalog.BuiltIn.All.Where(static part => part.DataBus != PartDataBus.Serial), static part =>
        Assert.All(Catalog.Of(part), pinOut => Assert.All(new[] { 8, 16 }.Where(part.Supports), width =>
        {
            var units = part.CapacityBytes * 8 / width;
            for (var bit = 0; units >> bit > 1; bit++)
            {
                Assert.NotNull(pinOut.PinOfAddress(bit, width));
            }

            Assert.Null(pinOut.PinOfAddress((int)long.Log2(units), width));
        })));

    [Theory]
    [InlineData("TSOP56-28F320J3", "pin-out from memory: check the data sheet")]
    [InlineData("DIP32-27C801", null)]
    public void A_pin_out_says_when_the_data_sheet_must_be_asked(string name, string? caution) => Assert.Equal(caution, Catalog.Find(name)!.Caution);

    [Fact]
    public void A_pin_that_is_not_there_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Catalog.Find("DIP8-24C")!.SignalAt(9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Catalog.Find("DIP8-24C")!.Neighbours(0));
    }

    private static int? PinOf(string part, string package, string signal) => Catalog.Find(PartCatalog.BuiltIn.Find(part)!, package)?.PinOf(signal);
}
