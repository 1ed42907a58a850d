using Cartwright.Headers;
using Cartwright.Platforms.Snes;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class SnesRoundTripTests
{
    [Property(MaxTest = 500)]
    public void Reading_a_field_and_writing_it_back_restores_its_bits(ulong seed, ulong other)
    {
        foreach (var field in new SnesPlatform().Layouts.SelectMany(layout => layout.Headers).SelectMany(table => table.Fields))
            CheckField(field, Noise(seed, field.Length), Noise(other, field.Length));
    }

    [Property(MaxTest = 200)]
    public Property A_small_header_read_and_stated_again_gives_the_same_rom() =>
        Prop.ForAll(Cases([SnesMapping.Lorom, SnesMapping.Hirom]), CheckRom);

    [Property(MaxTest = 8)]
    public Property A_large_header_read_and_stated_again_gives_the_same_rom() =>
        Prop.ForAll(Cases([SnesMapping.Exhirom, SnesMapping.Exlorom]), CheckRom);

    private static void CheckField(HeaderField field, byte[] bytes, byte[] target)
    {
        var text = field.Codec.Read(bytes);
        var mask = new byte[field.Length];
        field.Codec.Mask(mask);
        var before = target.ToArray();
        Assert.Null(field.Codec.Write(text, target));
        for (var i = 0; i < mask.Length; i++)
        {
            Assert.Equal(bytes[i] & mask[i], target[i] & mask[i]);
            Assert.Equal(before[i] & ~mask[i], target[i] & ~mask[i]);
        }
    }

    private static void CheckRom(Case given)
    {
        var first = given.Bench();
        foreach (var (field, value) in given.Settings)
            first.Header(field, value);

        var rom = first.Assemble().Rom();
        var second = given.Bench();
        foreach (var entry in SnesBench.Read(given.Mapping, rom).Entries)
            second.Header(entry.Field.Name, entry.Text);

        Assert.Equal(rom, second.Assemble().Rom());
    }

    private static byte[] Noise(ulong seed, int length)
    {
        var bytes = new byte[length];
        for (var i = 0; i < length; i++)
        {
            seed = unchecked((seed * 6364136223846793005) + 1442695040888963407);
            bytes[i] = (byte)(seed >> 56);
        }

        return bytes;
    }

    private static Arbitrary<Case> Cases(SnesMapping[] mappings)
    {
        var titles = Gen.Choose(0, 21).SelectMany(count => Gen.Elements(" ABCXYZabc019!-~\uFF61\uFF76\uFF9F".ToCharArray()).ArrayOf(count)).Select(letters => new string(letters));
        var settings = Gen.Elements(mappings).SelectMany(mapping => titles.SelectMany(title => Gen.CollectToArray(Choices(mapping)).Select(rows =>
            new Case(mapping, [("title", title), .. rows.Where(row => row.Value is not null).Select(row => (row.Field, row.Value!))]))));
        return settings.SelectMany(given => Gen.Elements(false, true).Select(code => given with { CodeBeforeHeader = code && !given.Extended })).ToArbitrary();
    }

    // Each field: one of its names, a raw value, or nothing. What may contradict another field on purpose is left out.
    private static IEnumerable<Gen<(string Field, string? Value)>> Choices(SnesMapping mapping)
    {
        var fields = SnesHeader.Table(mapping).Fields;
        foreach (var name in new[] { "saveRam", "chipset", "speed", "mapMode", "region", "version", "makerCode", "gameCode", "reserved", "expansionFlash", "expansionRam", "specialVersion", "chipsetSubtype" })
        {
            var field = fields.Single(row => row.Name == name);
            string?[] some = [.. field.Codec.Names.Select(row => row.Name), .. Others(name)];
            yield return Gen.OneOf(Gen.Constant<string?>(null), Gen.Elements(some)).Select(value => (name, value));
        }
    }

    private static string[] Others(string name) => name switch
    {
        "saveRam" or "expansionFlash" or "expansionRam" => ["raw 0x0F", "raw 0xFF"],
        "version" or "specialVersion" => ["0", "1", "255"],
        "makerCode" => ["QS", "  ", "hex 00FF"],
        "gameCode" => ["ALTE", "AB", "hex 01020304"],
        "reserved" => ["000000000000", "FFFFFFFFFFFF", "0102030405AA"],
        "mapMode" => ["0x0F"],
        "speed" => [],
        _ => ["0x77"],
    };

    // A custom chipset brings the extended header too.
    private static readonly string[] ExtendedFields = ["chipset", .. SnesHeader.Table(SnesMapping.Lorom).Fields.Where(row => row.When is not null).Select(row => row.Name)];

    private sealed record Case(SnesMapping Mapping, (string Field, string Value)[] Settings)
    {
        public bool CodeBeforeHeader { get; init; }

        public bool Extended => Settings.Select(row => row.Field).Intersect(ExtendedFields).Any();

        public RomBench Bench() => SnesBench.Clean(Mapping, bank => bank.AsSpan(SnesBench.At(Mapping, 0xFFB0), 0x10).Fill(CodeBeforeHeader ? (byte)0xEA : (byte)0));

        public override string ToString() => $"{Mapping.Name} code {CodeBeforeHeader}: {string.Join(", ", Settings.Select(row => $"{row.Field} = '{row.Value}'"))}";
    }
}
