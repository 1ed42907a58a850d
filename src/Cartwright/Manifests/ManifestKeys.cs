using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>The table of every key a manifest can have, apart from the header fields, which each platform's table lists.</summary>
public static class ManifestKeys
{
    /// <summary>The rows, in the order a manifest has them.</summary>
    public static ImmutableArray<ManifestKey> Rows { get; } =
    [
        new("$schema", ManifestKeyKind.Text, "Where editors find the schema of this file."),

        new("cart:name", ManifestKeyKind.Text, "Stem of every output file: letters, digits, hyphens, underscores.") { Required = true },
        new("cart:platform", ManifestKeyKind.Text, "The console: an id that `cartwright platforms` lists.") { Required = true },
        new("cart:title", ManifestKeyKind.Text, "The game's title, written into the header where the platform has a place for it."),
        new("cart:revision", ManifestKeyKind.Number, "The game's revision, written into the header where the platform has a place for it.", "0"),

        new("programs:#:file", ManifestKeyKind.Path, "The program file, relative to the manifest.") { Required = true },
        new("programs:#:format", ManifestKeyKind.Choice, "The file's format; recognised from the content when absent.") { Words = [.. ManifestWords.ProgramFormats.Keys] },
        new("programs:#:region", ManifestKeyKind.Text, "The region the bytes belong to, on platforms that have several."),
        new("programs:#:offset", ManifestKeyKind.Size, "Where the file's first byte (or its address 0) goes, as an offset into the region."),
        new("programs:#:address", ManifestKeyKind.Address, "Where it goes, as the console's own address: $C08000, or bank:address such as 03:4000."),
        new("programs:#:as", ManifestKeyKind.Text, "A place of the platform by name, instead of offset or address: bootCode."),
        new("programs:#:order", ManifestKeyKind.Choice, "Order of a raw file's bytes; recognised where the platform can; else the console's.") { Words = [.. ManifestWords.ImageOrders.Keys] },
        new("programs:#:skip", ManifestKeyKind.Size, "How many bytes at the start of a raw file are left out.", "0"),
        new("programs:#:length", ManifestKeyKind.Size, "How many bytes of a raw file are taken; all when absent."),
        new("programs:#:addressUnit", ManifestKeyKind.Number, "Bytes that one address of an Intel HEX or S-record file counts: 1, or 2 where addresses count words.", "1") { Words = ["1", "2"] },
        new("programs:#:load", ManifestKeyKind.Choice, "Which ELF address says where a segment lies in ROM.", "physical") { Words = ["physical", "virtual"] },

        new("rom:size", ManifestKeyKind.Size, "Size of the ROM; `fit` takes the smallest legal one.", Fit) { Words = [Fit] },
        new("rom:fill", ManifestKeyKind.Byte, "Value of bytes no program covers.", "0xFF"),
        new("regions:*:size", ManifestKeyKind.Size, "Size of this region, on platforms that have several; `fit` takes the smallest legal one.", Fit) { Words = [Fit] },
        new("regions:*:fill", ManifestKeyKind.Byte, "Value of bytes of this region that no program covers.", "0xFF"),

        new("conflictTables:#:region", ManifestKeyKind.Text, "The region the table lies in, on platforms that have several."),
        new("conflictTables:#:offset", ManifestKeyKind.Size, "Its first byte, as an offset into the region."),
        new("conflictTables:#:address", ManifestKeyKind.Address, "Its first byte, as the console's own address."),
        new("conflictTables:#:first", ManifestKeyKind.Byte, "The value of its first byte; each that follows is one more.", "0x00"),
        new("conflictTables:#:count", ManifestKeyKind.Number, "How many values it has, up to 256."),
        new("conflictTables:#:values:#", ManifestKeyKind.Byte, "A value of a table whose values do not count up."),

        new("header:keep", ManifestKeyKind.Truth, "true: where the program holds header bytes of its own, they win and are checked; false: the manifest's values win; or a list of field names to keep."),
        new("header:keep:#", ManifestKeyKind.Text, "A header field whose bytes in the program win."),
        new("header:*", ManifestKeyKind.Text, "A header field of the platform; `cartwright platforms NAME` lists them."),

        new("board:use", ManifestKeyKind.Text, "A board of the catalogue: an id that `cartwright boards` lists."),
        new("board:name", ManifestKeyKind.Text, "Name of a board described here."),
        new("board:description", ManifestKeyKind.Text, "What kind of board it is."),
        new("board:platform", ManifestKeyKind.Text, "The platform a board is for; the cart's own when absent."),
        new("board:source", ManifestKeyKind.Text, "Where the description comes from."),
        new("board:busWidth", ManifestKeyKind.Number, "Data lines of the console's bus to this board: 8, 16 or 32.", "8") { Words = ["8", "16", "32"] },
        new("board:byteOrder", ManifestKeyKind.Choice, "Which byte of a wider bus carries the lowest address: big-endian the one on the highest lines, little-endian the one on D0-D7.", "big-endian") { Words = ["big-endian", "little-endian"] },
        new("board:busVolts", ManifestKeyKind.Fraction, "Supply of the bus in volts.", "5"),
        new("board:expects:*", ManifestKeyKind.Text, "A header field and the value this board is wired for."),
        new("board:expects:*:#", ManifestKeyKind.Text, "One of several values this board is wired for."),
        new("board:joins:#:name", ManifestKeyKind.Text, "Name of a join, which a site uses as its `region`.") { Required = true },
        new("board:joins:#:parts:#:region", ManifestKeyKind.Text, "A region that lies in the join.") { Required = true },
        new("board:joins:#:parts:#:start", ManifestKeyKind.Size, "First byte of the region that lies there.", "0"),
        new("board:joins:#:parts:#:length", ManifestKeyKind.Size, "How much of it lies there; all that follows when absent."),
        new("board:joins:#:parts:#:at", ManifestKeyKind.Size, "Where in the join it lies.", "0"),
        new("board:sites:#:site", ManifestKeyKind.Text, "Name of a place for a chip, as printed on the board: U1.") { Required = true },
        new("board:sites:#:region", ManifestKeyKind.Text, "The region this chip holds, or the join of several.", "rom"),
        new("board:sites:#:width", ManifestKeyKind.Number, "Data lines of the chip in use: 8 or 16.", "8") { Words = ["8", "16"] },
        new("board:sites:#:lane", ManifestKeyKind.Choice, "Which byte of a wider bus the chip drives: low D0-D7, high D8-D15, and two more on a 32-bit one.", "word") { Words = ["word", "low", "high", "d16-d23", "d24-d31"] },
        new("board:sites:#:dataLines", ManifestKeyKind.Choice, "How the chip's data lines meet those of its lane: by a name, or a list of the chip's lines from D0 of the lane on.", "straight") { Words = ["bytes-exchanged", "bytes-reversed", "nibbles-exchanged", "reversed", "straight"] },
        new("board:sites:#:dataLines:#", ManifestKeyKind.Text, "The chip's data line that the next line of the lane meets: D7."),
        new("board:sites:#:addressLines:#", ManifestKeyKind.Text, "The chip's address line that the next line of the bus meets, counted in words of the chip from the lowest: A3. Lines that are not listed follow in their own order."),
        new("board:sites:#:ties:*", ManifestKeyKind.Choice, "What an address line of the chip meets that the bus does not drive, by the line's name: A18. `fill` says it for lines without a tie.") { Words = ["low", "high", "open"] },
        new("board:sites:#:latched:#", ManifestKeyKind.Text, "An address line of the chip that a bank latch drives."),
        new("board:sites:#:select:line", ManifestKeyKind.Text, "The bus line that enables the chip."),
        new("board:sites:#:select:level", ManifestKeyKind.Choice, "The level of that line when the chip is to answer.", "low") { Words = ["low", "high"] },
        new("board:sites:#:select:inverter", ManifestKeyKind.Truth, "Whether an inverter stands before the chip's enable, which is active low.", "false"),
        new("board:sites:#:select:start", ManifestKeyKind.Number, "First byte address of the range that enables the chip, where no single line does."),
        new("board:sites:#:select:end", ManifestKeyKind.Number, "Last byte address of that range."),
        new("board:sites:#:accessNs", ManifestKeyKind.Fraction, "Nanoseconds the console leaves from address or enable to data."),
        new("board:sites:#:outputEnableNs", ManifestKeyKind.Fraction, "Nanoseconds the console leaves from output enable to data, where that comes later than address and enable."),
        new("board:sites:#:start", ManifestKeyKind.Size, "Where this chip's slice of the region begins, in bytes of the region.", "0"),
        new("board:sites:#:length", ManifestKeyKind.Size, "How much of the region this chip's slice may hold; `rest` for all that follows.", Rest) { Words = [Rest] },
        new("board:sites:#:every", ManifestKeyKind.Size, "Where the chip holds a part of each block of the region, as with banks dealt to two chips: length of a block. `start` and `length` then count in the block."),
        new("board:sites:#:fill", ManifestKeyKind.Choice, "How a chip larger than its slice is filled: erased (0xFF behind), repeat (mirrored), top (0xFF in front).", "repeat") { Words = ["erased", "repeat", "top"] },
        new("board:sites:#:largest", ManifestKeyKind.Size, "Largest chip the site's lines can address."),
        new("board:sites:#:restAt", ManifestKeyKind.Size, "Where on the chip a bus line selects the rest of a ROM that is no power of two and longer than half of this; its largest power of two is repeated up to there."),
        new("board:sites:#:blocks", ManifestKeyKind.Number, "How many equal blocks of a ROM the console selects by lines of their own."),
        new("board:sites:#:blockStep", ManifestKeyKind.Size, "Bytes from one such block to the next on the chip; a smaller block is repeated inside."),
        new("board:sites:#:meaning", ManifestKeyKind.Text, "What the site is for, in a few words."),
        new("board:chips:*:part", ManifestKeyKind.Text, "The chip fitted at this site: a part that `cartwright parts` lists."),
        new("board:chips:*:capacity", ManifestKeyKind.Size, "Capacity of a chip the catalogue does not have."),
        new("board:chips:*:width", ManifestKeyKind.Text, "Data lines of a chip the catalogue does not have: 8, 16, or 8/16 where a pin chooses.") { Words = ["8", "16", "8/16"] },
        new("board:chips:*:supply", ManifestKeyKind.Text, "Supply of a chip the catalogue does not have, in volts: 4.5-5.5."),
        new("board:chips:*:sectors", ManifestKeyKind.Text, "Sectors of a chip the catalogue does not have, from address 0 upward: 16KiB 2x8KiB 32KiB 7x64KiB."),
        new("board:chips:*:package", ManifestKeyKind.Text, "The package fitted, such as DIP32: `cartwright boards cart.json` then names its pins only."),
        new("board:chips:*:accessNs", ManifestKeyKind.Fraction, "Access time of the chip fitted in nanoseconds, as its marking says; the slowest grade the part is made in when absent."),
        new("board:chips:*:outputEnableNs", ManifestKeyKind.Fraction, "Nanoseconds from output enable to data of the chip fitted, from its data sheet."),
        new("board:chips:*:wordOrder", ManifestKeyKind.Choice, "Word order of this chip's file.", "images:wordOrder") { Words = [.. ManifestWords.WordOrders.Keys] },

        new("images:folder", ManifestKeyKind.Path, "Folder of the output files, below the manifest's own.", "dist"),
        new("images:formats", ManifestKeyKind.Choice, "Format of the chip files.", "raw") { Words = [.. ManifestWords.ImageFormats.Keys] },
        new("images:formats:#", ManifestKeyKind.Choice, "A format every chip file is written in.") { Words = [.. ManifestWords.ImageFormats.Keys] },
        new("images:romLength", ManifestKeyKind.Size, "Length of the file for emulators and readers where it ends before the ROM does: only fill may be missing. Chip files are always whole."),
        new("images:wordOrder", ManifestKeyKind.Choice, "Word order of files for 16-bit chips: bus (the console's order) or programmer (little-endian words).", "bus") { Words = [.. ManifestWords.WordOrders.Keys] },

        new("slots:games:#:file", ManifestKeyKind.Path, "A finished image of a game, relative to the manifest.") { Required = true },
        new("slots:games:#:title", ManifestKeyKind.Text, "Its title in the directory and in tables; the file's name when absent."),
        new("slots:games:#:size", ManifestKeyKind.Size, "Size of its slot, a power of two; the smallest that holds it when absent."),
        new("slots:games:#:at", ManifestKeyKind.Size, "Where its slot begins in the region, a multiple of the slot's size; the lowest free place when absent."),
        new("slots:games:#:values:*", ManifestKeyKind.Number, "A number of this game for the directory, by a name of your own: mapper bits, a colour."),
        new("slots:directory:region", ManifestKeyKind.Text, "The region the directory lies in, on platforms that have several."),
        new("slots:directory:offset", ManifestKeyKind.Size, "Its first byte, as an offset into the region."),
        new("slots:directory:address", ManifestKeyKind.Address, "Its first byte, as the console's own address."),
        new("slots:directory:recordLength", ManifestKeyKind.Size, "Bytes of the record of one game; it must be stated."),
        new("slots:directory:recordsAt", ManifestKeyKind.Size, "Where in the directory the first record begins.", "0"),
        new("slots:directory:countAt", ManifestKeyKind.Size, "Where in the directory a byte tells the number of games; no such byte when absent."),
        new("slots:directory:end", ManifestKeyKind.Byte, "Value that fills a record behind the last; no such record when absent."),
        new("slots:directory:fields:#:kind", ManifestKeyKind.Choice, "What the field holds: index (from 0), start or size of the slot, length of the game, title, or a value the game states.") { Words = [.. ManifestWords.SlotFieldKinds.Keys], Required = true },
        new("slots:directory:fields:#:name", ManifestKeyKind.Text, "Which of the game's values it holds."),
        new("slots:directory:fields:#:region", ManifestKeyKind.Text, "The region whose slot it tells of, on platforms that have several; the first when absent."),
        new("slots:directory:fields:#:at", ManifestKeyKind.Size, "Its first byte in the record.", "0"),
        new("slots:directory:fields:#:width", ManifestKeyKind.Size, "Its length in bytes.", "1"),
        new("slots:directory:fields:#:byteOrder", ManifestKeyKind.Choice, "Which byte of a number comes first.", "big-endian") { Words = ["big-endian", "little-endian"] },
        new("slots:directory:fields:#:unit", ManifestKeyKind.Size, "Bytes that one count of a start, size or length stands for: 16KiB for a bank number.", "1"),
        new("slots:directory:fields:#:pad", ManifestKeyKind.Byte, "Value of the bytes behind a title.", "0x20"),
        new("slots:switches:#:region", ManifestKeyKind.Text, "The region whose lines the switches drive; the first when absent."),
        new("slots:switches:#:lines:#", ManifestKeyKind.Text, "The address line of the next switch, counted as a bit of a byte address of the region: A20. An open switch is high."),

        new("run:label", ManifestKeyKind.Text, "Text of each unit's label, with names of fields in braces: `LANTERN TIDE {serial}`; also {title}, {revision} and {boardRevision}."),
        new("run:boardRevision", ManifestKeyKind.Text, "Revision of the circuit board, for the ledger."),
        new("run:fields:#:name", ManifestKeyKind.Text, "Name of the field, by which labels and the table of units know it.") { Required = true },
        new("run:fields:#:kind", ManifestKeyKind.Choice, "serial: the unit's number; seed: bytes that look random and follow from cart, field and serial; text: out of the table of units.") { Words = [.. ManifestWords.UnitFieldKinds.Keys], Required = true },
        new("run:fields:#:region", ManifestKeyKind.Text, "The region it lies in, on platforms that have several."),
        new("run:fields:#:offset", ManifestKeyKind.Size, "Its first byte in the region.") { Required = true },
        new("run:fields:#:width", ManifestKeyKind.Size, "Its length in bytes, check digits among them.") { Required = true },
        new("run:fields:#:form", ManifestKeyKind.Choice, "A serial as digits (text) or as a number (binary).", "text") { Words = ["text", "binary"] },
        new("run:fields:#:byteOrder", ManifestKeyKind.Choice, "Which byte of a binary serial comes first.", "big-endian") { Words = ["big-endian", "little-endian"] },
        new("run:fields:#:alphabet", ManifestKeyKind.Text, "Digits of a serial, that of 0 first.", UnitField.TenDigits),
        new("run:fields:#:checkDigit", ManifestKeyKind.Choice, "Ends a serial in digits: luhn (one digit, ISO/IEC 7812-1) or mod-97 (two decimal digits, ISO/IEC 7064 MOD 97-10).", "none") { Words = [.. ManifestWords.CheckDigits.Keys] },
        new("run:fields:#:pad", ManifestKeyKind.Byte, "Value of the bytes behind a text.", "0x20"),
    ];

    /// <summary>The sections, in the order a manifest has them.</summary>
    public static ImmutableArray<ManifestGroup> Groups { get; } =
    [
        new("cart", "The game: what it is called and what it is for."),
        new("programs", "The program files, a list of one or more."),
        new("programs:#", "A program file, which bytes of it are taken and where they go."),
        new("rom", "The ROM, on platforms with one region."),
        new("regions", "The regions, on platforms that have several."),
        new("regions:*", "A region: `prg` and `chr` on the NES."),
        new("conflictTables", "Tables in the programs that the build checks, on boards whose ROM answers while the console writes to a bank latch."),
        new("conflictTables:#", "A table whose bytes must be the values that are written over them."),
        new("header", "The header inside the ROM or in front of it. What can be worked out need not be stated; what is stated is checked."),
        new("board", "The cartridge board: one of the catalogue, or one described here."),
        new("board:expects", "Header fields the board is wired for; a header with another value is warned of."),
        new("board:joins", "Regions laid into one, for a chip that serves several of them."),
        new("board:joins:#", "A join: what lies where. Bytes between the parts stay erased."),
        new("board:joins:#:parts", "The parts of the join, a list of one or more."),
        new("board:joins:#:parts:#", "A region, or a stretch of one, that lies in the join."),
        new("board:sites", "The places for chips, a list of one or more."),
        new("board:sites:#", "A place for one chip: how it meets the bus, and which bytes it holds."),
        new("board:sites:#:ties", "Address lines of the chip that the bus does not drive."),
        new("board:sites:#:select", "What enables the chip: a line of the bus, or a range of addresses."),
        new("board:chips", "The chips fitted, by the name of their site."),
        new("board:chips:*", "The chip fitted at a site: `U1`."),
        new("images", "The output files."),
        new("slots", "Several finished games in one image: each in a slot of its own, chosen by switches or by a menu program."),
        new("slots:games", "The games, a list in the order of their slots."),
        new("slots:games:#", "A game: a finished image with a header of its own, which is checked."),
        new("slots:games:#:values", "Numbers of this game for the directory."),
        new("slots:directory", "The block by which a menu program finds the games; your program describes its layout here."),
        new("slots:directory:fields", "The fields of a record, a list; bytes of no field are zero."),
        new("slots:directory:fields:#", "A field of a record."),
        new("slots:switches", "Address lines that switches or jumpers drive in place of the console, an item for each region."),
        new("slots:switches:#", "The lines of one region: the first for switch 1."),
        new("run", "What differs from unit to unit of a production run."),
        new("run:fields", "The places in the ROM that differ, a list."),
        new("run:fields:#", "A place in the ROM that differs from unit to unit."),
    ];

    /// <summary>The nearest section around a key; null for a key outside all of them.</summary>
    /// <param name="row">The key.</param>
    internal static ManifestGroup? GroupOf(ManifestKey row) =>
        Groups.Where(group => row.Pattern.StartsWith(group.Pattern + ":", StringComparison.Ordinal)).MaxBy(static group => group.Pattern.Length);

    /// <summary>Patterns of the keys a board of the catalogue has: those of a board described in a manifest, without the chips fitted.</summary>
    internal static IEnumerable<string> Board =>
        Rows.Select(static row => row.Pattern)
            .Where(static pattern => pattern.StartsWith(BoardPrefix, StringComparison.Ordinal) && !pattern.StartsWith("board:chips", StringComparison.Ordinal))
            .Select(static pattern => pattern[BoardPrefix.Length..]);

    private const string BoardPrefix = "board:";
    /// <summary>The size word for the smallest legal one.</summary>
    public const string Fit = "fit";
    private const string Rest = "rest";
}
