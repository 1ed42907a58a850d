using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Production;
using FsCheck;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Production;

/// <summary>Serial numbers in digits, and what guards them.</summary>
public sealed class SerialTextTests
{
    private const string Letters = "0123456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    // 7992739871-3 is the usual example of the Luhn formula; 794-44 that of MOD 97-10 (both from memory, checked by hand).
    [Theory]
    [InlineData(7992739871, 11, CheckDigit.Luhn, "79927398713")]
    [InlineData(794, 5, CheckDigit.Mod97, "79444")]
    [InlineData(0, 4, CheckDigit.None, "0000")]
    [InlineData(9999, 4, CheckDigit.None, "9999")]
    public void Numbers_are_written_with_their_check_digits(long serial, int width, CheckDigit check, string expected) =>
        Assert.Equal(expected, SerialText.Write(serial, Field(width, check)));

    [Theory]
    [InlineData(10000, 4, CheckDigit.None)]
    [InlineData(1000, 4, CheckDigit.Luhn)]
    [InlineData(100, 4, CheckDigit.Mod97)]
    [InlineData(0, 1, CheckDigit.Luhn)]
    public void A_number_that_does_not_fit_has_no_text(long serial, int width, CheckDigit check) => Assert.Null(SerialText.Write(serial, Field(width, check)));

    [Fact]
    public void Other_alphabets_count_in_their_own_radix()
    {
        var field = Field(3, CheckDigit.None) with { Alphabet = Letters };
        Assert.Equal("00Z", SerialText.Write(Letters.Length - 1, field));
        Assert.Equal("010", SerialText.Write(Letters.Length, field));
    }

    [Property]
    public void Luhn_catches_every_wrong_digit(PositiveInt serial, byte place, byte change)
    {
        var field = Field(8, CheckDigit.Luhn) with { Alphabet = Letters };
        var text = SerialText.Write(serial.Get, field)!;
        var at = place % (text.Length - 1);
        var wrong = text.ToCharArray();
        wrong[at] = Letters[(Letters.IndexOf(text[at], StringComparison.Ordinal) + 1 + (change % (Letters.Length - 1))) % Letters.Length];
        Assert.NotEqual(text[^1], SerialText.Write(Number(wrong.AsSpan(0, 7)), field)![^1]);
    }

    [Property]
    public void Mod_97_leaves_1(PositiveInt serial) =>
        Assert.Equal(1, (long)(UInt128.Parse(SerialText.Write(serial.Get, Field(12, CheckDigit.Mod97))!, System.Globalization.CultureInfo.InvariantCulture) % 97));

    [Fact]
    public void A_check_digit_needs_digits_it_can_be_computed_in()
    {
        Assert.NotNull(SerialText.Problem(Field(4, CheckDigit.Luhn) with { Alphabet = "012" }));
        Assert.NotNull(SerialText.Problem(Field(4, CheckDigit.Mod97) with { Alphabet = Letters }));
        Assert.Null(SerialText.Problem(Field(4, CheckDigit.Mod97)));
    }

    private static long Number(ReadOnlySpan<char> digits)
    {
        var number = 0L;
        foreach (var digit in digits)
            number = (number * Letters.Length) + Letters.IndexOf(digit, StringComparison.Ordinal);

        return number;
    }

    private static UnitField Field(int width, CheckDigit check) => new("serial", UnitFieldKind.Serial, 0, width, SourcePlace.None) { Check = check };
}
