using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

public sealed class RoundTripTests
{
    // Bytes that come near to each field's own forms, where random ones hardly ever do.
    private static readonly string[] Beginnings =
        ["", "J", "U", "E", "F", "JUE", "USA", "J6", "mouse", "raw ", "hex ", "hex 4A4A4A", "-01", "-1 ", "GM ", "SEGA", "MO", "none", "RA\u0000 ", "RA\u00F8 \0 \0", "RA\u00E0 \0 \0\0\0", "RA\u00E8@\0 \0\u0001\0 \0\u0001", "FL\0 \0=\0\0\0>\u00FF\u00FF"];

    [Property]
    public void Text_read_from_likely_bytes_gives_the_same_bytes_back(int seed)
    {
        var random = new Random(seed);
        foreach (var field in MegaDriveBench.Platform.Layouts[0].Headers[0].Fields)
        {
            var bytes = new byte[field.Length];
            bytes.AsSpan().Fill(random.Next(3) switch { 0 => (byte)' ', 1 => (byte)0, _ => (byte)random.Next(0x100) });
            var beginning = System.Text.Encoding.Latin1.GetBytes(Beginnings[random.Next(Beginnings.Length)]);
            beginning.AsSpan(0, Math.Min(beginning.Length, bytes.Length)).CopyTo(bytes);
            if (random.Next(2) == 0)
                bytes[random.Next(bytes.Length)] = (byte)random.Next(0x100);

            HeaderTextTests.AssertRestored(field, bytes);
        }
    }

    [Property(MaxTest = 40)]
    public void A_header_read_back_and_stated_again_gives_the_same_image(int seed)
    {
        var random = new Random(seed);
        var program = MegaDriveBench.Program(0x400 + (2 * random.Next(0x400)));
        var bench = MegaDriveBench.Bench(program).Size("rom", 0x1000);
        foreach (var (field, texts) in Choices)
        {
            if (random.Next(2) == 0)
                bench.Header(field, texts[random.Next(texts.Length)]);
        }

        var first = bench.Assemble();
        var again = new RomBench(MegaDriveBench.Platform).Program("rom", 0, program).Size("rom", 0x1000);
        foreach (var entry in ReadBack(first).Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(first.Bytes("rom").ToArray(), again.Assemble().Bytes("rom").ToArray());
    }

    private static readonly (string Field, string[] Texts)[] Choices =
    [
        ("systemType", ["SEGA GENESIS", " SEGA MEGA DRIVE", "SEGA LANTERN"]),
        ("copyright", ["", "(C)T-1231991.JAN", "Quillmoor"]),
        ("domesticTitle", ["Lantern Tide", "hex " + Convert.ToHexString(TestBytes.L(48)), ""]),
        ("overseasTitle", ["LANTERN   TIDE", "A title of exactly forty-eight letters, no less."]),
        ("serial", ["GM T-12345", "AI LANTERN1", "raw hex 12"]),
        ("revision", ["7", "99", "raw rev"]),
        ("devices", ["6-button-pad", "J6M", "raw joystick", ""]),
        ("ramStart", ["0xFFFF0000", "$E0FF0000"]),
        ("ramEnd", ["0xFFFFFFFF"]),
        ("saveMemory", ["8KiB battery odd", "64KiB volatile word at $300000", "eeprom", "128KiB flash at $3D0000", "hex 5241F820002000000020FFFF"]),
        ("modem", ["MOQUIL01.0"]),
        ("memo", ["A lamp at every quay"]),
        ("region", ["europe", "japan americas", "americas europe as digit", "F", "raw USA", "hex 010203"]),
        ("reserved", ["spare"]),
    ];

    [Fact]
    public void A_general_tool_recognises_a_build()
    {
        Tool.Require("file");
        var folder = Directory.CreateTempSubdirectory("cartwright-md-");
        try
        {
            var cart = MegaDriveBench.Bench(MegaDriveBench.Program(0x4000)).Assemble();
            File.WriteAllBytes(Path.Combine(folder.FullName, "lantern-tide.md"), cart.Bytes("rom"));
            var output = Tool.Run("file", folder.FullName, "--brief", "lantern-tide.md").Output;
            Assert.Contains("Sega Mega Drive / Genesis ROM image", output, StringComparison.Ordinal);
            Assert.Contains("\"LANTERN TIDE ", output, StringComparison.Ordinal);
            Assert.Contains("GM 00000000-00", output, StringComparison.Ordinal);
            Assert.Contains(MegaDriveBench.Copyright, output, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static HeaderImage ReadBack(CartView cart) =>
        HeaderReader.Read(cart.Headers[0].Table, cart.Bytes("rom"), new HeaderContext(null, null, cart.Rom.LengthOf))!;
}
