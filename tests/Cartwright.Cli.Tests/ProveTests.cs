using System.Text;
using System.Text.Json;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>Read-backs against what a chip should hold, through the command.</summary>
public sealed class ProveTests : IDisposable
{
    private const int Size = 32768;

    private readonly TempFolder _folder = new();
    private readonly string _image;
    private readonly byte[] _bytes;

    public ProveTests()
    {
        Pattern("--size", "32KiB");
        _image = In("signature.U1.bin");
        _bytes = File.ReadAllBytes(_image);
    }

    private static CaseResult Prove(params string[] arguments) => CommandRun.Here(["prove", .. arguments]);

    private string In(string name) => Path.Combine(_folder.Path, name);

    private string Save(string name, byte[] bytes)
    {
        _folder.Write(name, bytes);
        return In(name);
    }

    private void Pattern(params string[] arguments)
    {
        var made = CommandRun.Here(["pattern", "signature", "--out", _folder.Path, .. arguments]);
        Assert.Equal((ExitCode.Done, ""), (made.ExitCode, made.Errors));
    }

    // The read-back's formula: the word at an address is that of the address with the line low.
    private static byte[] StuckLow(byte[] image, int line) => [.. image.Select((_, a) => image[a & ~(1 << line)])];

    [Fact]
    public void A_stuck_line_is_named_with_the_pin_and_the_pins_beside_it()
    {
        // AT28C256 data sheet, pin configurations: A12 is pin 2, beside A14 and A7.
        var result = Prove(_image, Save("read.bin", StuckLow(_bytes, 12)), "--part", "AT28C256", "--package", "DIP28");
        Assert.Equal(ExitCode.Found, result.ExitCode);
        Assert.StartsWith("U1: not equal: address-stuck-low A12\n", result.Output, StringComparison.Ordinal);
        Assert.Contains("A12  U1 pin 2 (DIP28), beside pin 1 (A14) and pin 3 (A7)", result.Output, StringComparison.Ordinal);
        Assert.Contains("This explains 100 % of all words", result.Output, StringComparison.Ordinal);
        Assert.Contains("Switch off", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_json_has_the_verdict_as_a_machine_wants_it()
    {
        var read = _bytes.Select(static value => (byte)((value & 0xF3) | ((value & 0x0C) == 0x0C ? 0x0C : 0))).ToArray();
        var result = Prove(_image, Save("read.bin", read), "--part", "AT28C256", "--package", "DIP28", "--json");
        Assert.Equal((ExitCode.Found, ""), (result.ExitCode, result.Errors));
        using var json = JsonDocument.Parse(result.Output);
        var root = json.RootElement;
        Assert.False(root.GetProperty("equal").GetBoolean());
        var fault = Assert.Single(root.GetProperty("faults").EnumerateArray());
        Assert.Equal(("data-shorted", "low", "U1"), (fault.GetProperty("kind").GetString(), fault.GetProperty("wins").GetString(), fault.GetProperty("site").GetString()));
        Assert.Equal(["D2", "D3"], fault.GetProperty("lines").EnumerateArray().Select(static line => line.GetString()));
        // AT28C256 data sheet, pin configurations: D2 is pin 13 and D3 is pin 15, with ground between them.
        Assert.Equal([13, 15], fault.GetProperty("pins").EnumerateArray().Select(static pin => pin.GetProperty("pin").GetInt32()));
        Assert.Equal(1, root.GetProperty("explains").GetProperty("all").GetDouble());
        Assert.True(root.GetProperty("runnerUp").GetProperty("explains").GetProperty("all").GetDouble() < 1);
        Assert.Equal(JsonValueKind.Array, root.GetProperty("candidates").ValueKind);
        Assert.True(root.TryGetProperty("next", out _));
    }

    [Fact]
    public void Pins_side_by_side_are_said_to_be()
    {
        var read = _bytes.Select(static value => (byte)((value & 0xE7) | ((value & 0x18) != 0 ? 0x18 : 0))).ToArray();
        var result = Prove(_image, Save("read.bin", read), "--part", "AT28C256", "--package", "DIP28");
        Assert.Contains("Pins 15 and 16 of DIP28 lie side by side.", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pin_out_nobody_has_seen_comes_with_a_caution()
    {
        var image = Save("small.bin", _bytes[..2048]);
        var result = Prove(image, Save("read.bin", StuckLow(_bytes[..2048], 7)), "--part", "AT28C16");
        Assert.Contains("Caution: DIP24: pin-out from memory: check the data sheet.", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Through_the_edge_a_line_of_the_bus_is_told_apart_from_the_chips()
    {
        Pattern("--board", "md-double-8bit", "--size", "64KiB", "--name", "cart");
        var cartridge = File.ReadAllBytes(In("cart.cartridge.rom.bin"));
        var record = In("cart.record.json");
        Assert.Equal(ExitCode.Done, Prove(record, Save("read.bin", cartridge)).ExitCode);

        // A line of the bus that both chips share: byte address bit 6 is A6 of the bus, and A5 of each chip.
        using var shared = JsonDocument.Parse(Prove(record, Save("read.bin", StuckLow(cartridge, 6)), "--json").Output);
        Assert.Equal(["U1", "U2"], shared.RootElement.GetProperty("faults").EnumerateArray().Select(static fault => fault.GetProperty("site").GetString()));
        Assert.All(shared.RootElement.GetProperty("faults").EnumerateArray(), static fault => Assert.Equal("A5", fault.GetProperty("lines")[0].GetString()));
        Assert.Equal("A6", Assert.Single(shared.RootElement.GetProperty("sharedLines").EnumerateArray()).GetProperty("line").GetString());

        // D11 of the bus is D3 of the upper chip alone; the even bytes are its own.
        var high = cartridge.Select(static (value, b) => b % 2 == 0 ? (byte)(value | 0x08) : value).ToArray();
        using var own = JsonDocument.Parse(Prove(record, Save("read.bin", high), "--json").Output);
        var fault = Assert.Single(own.RootElement.GetProperty("faults").EnumerateArray());
        Assert.Equal(("U1", "D3", "D11"), (fault.GetProperty("site").GetString(), fault.GetProperty("lines")[0].GetString(), fault.GetProperty("busLines")[0].GetString()));
    }

    [Fact]
    public void Chips_in_each_others_sockets_are_known_from_the_record()
    {
        Pattern("--board", "md-double-8bit", "--size", "64KiB", "--name", "cart");
        var result = Prove(In("cart.record.json"), Save("read.bin", File.ReadAllBytes(In("cart.U2.bin"))), "--site", "U1", "--brief");
        Assert.Equal((ExitCode.Found, "U1: not equal: chips-exchanged image=U2\n"), (result.ExitCode, result.Output));
    }

    [Fact]
    public void A_unit_of_a_run_is_equal_but_for_its_own_bytes()
    {
        _folder.Write("tide.bin", [0x11, 0x11]);
        var manifest = Save("cart.json", Encoding.UTF8.GetBytes(
            """
            {
              "cart": { "name": "tide", "platform": "ngp", "title": "TIDE" },
              "programs": [{ "file": "tide.bin", "offset": "0x40" }],
              "board": { "name": "own", "busWidth": 8, "busVolts": 3.3, "sites": [{ "site": "U1" }], "chips": { "U1": { "capacity": "512KiB" } } },
              "run": { "label": "No. {serial}", "boardRevision": "B", "fields": [{ "name": "serial", "kind": "serial", "offset": "0x100", "width": 7 }] }
            }
            """));
        Assert.Equal(ExitCode.Done, CommandRun.Here("run", manifest, "--units", "1", "--first", "42").ExitCode);
        var unit = In("dist/run/tide.000042.U1.bin");
        var result = Prove(manifest, unit);
        Assert.Equal(ExitCode.Done, result.ExitCode);
        Assert.Contains("CW9018", result.Errors, StringComparison.Ordinal);
        var bytes = File.ReadAllBytes(unit);
        bytes[0x107] ^= 1;
        Assert.Equal(ExitCode.Found, Prove(manifest, Save("other.bin", bytes)).ExitCode);
    }

    [Fact]
    public void A_whole_rom_is_cut_for_its_board()
    {
        var rom = Path.Combine(Cartwright.Tests.Approved.RepositoryRoot(), "examples", "lantern-tide-md");
        Assert.Equal(ExitCode.Done, CommandRun.Here("build", rom, "--out", _folder.Path).ExitCode);
        var game = In("lantern-tide-md.md");
        var copy = Save("read.md", File.ReadAllBytes(game));
        Assert.Equal((ExitCode.Done, "U1: equal\nU2: equal\n"), Told(Prove(game, copy, "--board", "md-double-8bit", "--brief")));
        Assert.Equal((ExitCode.Done, "U2: equal\n"), Told(Prove(game, In("lantern-tide-md.U2.bin"), "--board", "md-double-8bit", "--site", "U2", "--brief")));

        static (int, string) Told(CaseResult result) => (result.ExitCode, result.Output);
    }

    [Fact]
    public void A_text_as_long_as_the_chip_may_be_what_was_burnt()
    {
        var text = new StringBuilder();
        while (text.Length < Size)
        {
            text.Append(":0100000000FF\n");
        }

        var result = Prove(_image, Save("read.bin", Encoding.ASCII.GetBytes(text.ToString())[..Size]));
        Assert.Equal((ExitCode.Found, ""), (result.ExitCode, result.Errors));
    }

    [Fact]
    public void Written_through_the_same_lines_an_exchange_does_not_show()
    {
        var result = Prove(_image, "--diagnosable", "--in-place", "--json");
        using var json = JsonDocument.Parse(result.Output);
        Assert.Equal(ExitCode.Done, result.ExitCode);
        Assert.Contains(json.RootElement.GetProperty("chips")[0].GetProperty("invisible").EnumerateArray(), static fault => fault.GetProperty("kind").GetString() == "address-swapped");
    }

    [Theory]
    [InlineData("CW9000", "image", "empty")]
    [InlineData("CW9001", "image", "odd", "--width", "16")]
    [InlineData("CW9002", "record", "short", "--site", "U3")]
    [InlineData("CW9003", "record", "short")]
    [InlineData("CW9004", "image", "text")]
    [InlineData("CW9004", "text", "image")]
    [InlineData("CW9005", "record", "short", "--cartridge")]
    [InlineData("CW9007", "image", "image-again", "--insertions", "1,2")]
    [InlineData("CW9008", "image", "image")]
    [InlineData("CW9008", "record", "own-chip", "--site", "U1")]
    [InlineData("CW9009", "bad-record", "image")]
    [InlineData("CW9010", "altered-record", "short", "--site", "U1")]
    [InlineData("CW9012", "no-chips", "image")]
    [InlineData("CW9012", "image", "image-again", "--cartridge")]
    [InlineData("CW9013", "image", "image-again", "--may-differ", "32760+16")]
    [InlineData("CW9014", "image", "short", "--old", "short")]
    public void What_cannot_be_proved_is_refused_with_a_finding(string code, string expected, string read, params string[] options)
    {
        var result = Prove([Input(expected), Input(read), .. options.Select(option => option == "short" ? Input(option) : option)]);
        Assert.Equal((ExitCode.Refused, ""), (result.ExitCode, result.Output));
        Assert.Contains($" error {code}: ", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_many_reads_and_none_are_refused()
    {
        var read = Save("read.bin", _bytes);
        Assert.Contains("CW9006", Prove([_image, .. Enumerable.Repeat(read, 129)]).Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Prove([_image, .. Enumerable.Repeat(read, 128), "--brief"]).ExitCode);
        Assert.Contains("CW9015", Prove(_image).Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_without_raw_images_cannot_be_proved()
    {
        Pattern("--board", "md-double-8bit", "--size", "64KiB", "--name", "cart");
        var record = In("cart.record.json");
        File.WriteAllText(record, File.ReadAllText(record).Replace("\"format\": \"raw\"", "\"format\": \"intel-hex\"", StringComparison.Ordinal));
        Assert.Contains("CW9011", Prove(record, _image, "--site", "U1").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_of_another_size_or_package_is_told_and_the_verdict_stands()
    {
        var result = Prove(_image, Save("read.bin", StuckLow(_bytes, 3)), "--part", "SST39SF040", "--package", "QFN12");
        Assert.Equal(ExitCode.Found, result.ExitCode);
        Assert.Contains(" warning CW9016: ", result.Errors, StringComparison.Ordinal);
        Assert.Contains(" warning CW9017: ", result.Errors, StringComparison.Ordinal);
    }

    private string Input(string name)
    {
        switch (name)
        {
            case "empty": return Save("empty.bin", []);
            case "odd": return Save("odd.bin", _bytes[1..]);
            case "short": return Save("short.bin", _bytes[..4096]);
            case "text": return Save("text.hex", ":0100000000FF\n:00000001FF\n"u8.ToArray());
            case "image-again": return Save("again.bin", _bytes);
            case "bad-record": return Save("bad.record.json", """{ "record": 1, "board": { "board": "x" }, "chips": [ { "site": 3 } ] }"""u8.ToArray());
            case "no-chips": return Save("none.record.json", """{ "record": 1 }"""u8.ToArray());
            case "own-chip": return In("cart.U1.bin");
            case "record" or "altered-record":
                Pattern("--board", "md-double-8bit", "--size", "64KiB", "--name", "cart");
                if (name != "record")
                {
                    Save("cart.U1.bin", [.. _bytes.Reverse()]);
                }

                return In("cart.record.json");
            default: return _image;
        }
    }

    public void Dispose() => _folder.Dispose();
}
