using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.NeoGeoPocket;

/// <summary>Neo Geo Pocket and Neo Geo Pocket Color.</summary>
public sealed class PocketPlatform : Platform
{
    private static readonly PlatformLayout Only = new("ngp",
        [new RegionRule(PocketHeader.Region, SizeRule.PowersOfTwo(512L << 10, 2L * PocketAddresses.Window), "header, program and data")],
        [PocketHeader.Table], new PocketAddresses());

    /// <inheritdoc/>
    public override PlatformFacts Facts => PocketFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => PocketFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts => [Only];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => Only;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => cart["console"] == "mono" ? "ngp" : "ngc";

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        file.Length >= PocketHeader.Length && IsLicence(Encoding.Latin1.GetString(file[..28]))
            ? new RecognitionClaim(Certainty.Exact, "the licence text at 0x00")
            : null;

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        var rom = cart.Rom[PocketHeader.Region]!;
        void Add(FindingRule rule, string key, string message) => log.Add(rule, cart.Place(key), message);

        if (!IsLicence(cart["licence"]!))
        {
            Add(PocketFindings.NoLicence, "header:licence", $"The first 28 bytes are `{cart["licence"]}`.");
        }

        var entry = (long)new BytesPlacement(4, ByteOrder.LittleEndian).Read(rom.Bytes.Span[0x1C..]);
        var place = Only.Addresses.Locate(new ConsoleAddress(null, entry), static _ => null);
        if (place.Region is null || place.Offset < PocketHeader.Length || rom.CoveringSegment(place.Offset, 1) is null)
        {
            Add(PocketFindings.BadEntry, "header:entry", string.Create(CultureInfo.InvariantCulture, $"The entry is ${entry:X6}, and no program is there."));
        }

        if (rom.Fill != Blank.Erased)
        {
            Add(PocketFindings.Filled, "rom:fill", string.Create(CultureInfo.InvariantCulture, $"The ROM is filled with 0x{rom.Fill:X2}."));
        }
        else if (PocketBlocks.Blank(rom.Bytes.Span).IsEmpty)
        {
            Add(PocketFindings.NoSaveBlock, "rom:size", $"None of the {PocketBlocks.Of(rom.Length).Length} blocks of the ROM's {ByteSize.Describe(rom.Length)} is all 0xFF.");
        }

        if (rom.Bytes.Span[0x30..PocketHeader.Length].ContainsAnyExcept((byte)0))
        {
            Add(PocketFindings.ReservedUsed, "header:reserved", $"0x30-0x3F hold {cart["reserved"]}.");
        }

        if (!MasterSystem.Bcd.TryRead(rom.Bytes.Span[0x20], out _) || !MasterSystem.Bcd.TryRead(rom.Bytes.Span[0x21], out _))
        {
            Add(PocketFindings.SoftwareIdForm, "header:softwareId", $"The software id is {cart["softwareId"]}.");
        }
    }

    private static bool IsLicence(string text) => PocketHeader.Licences.Contains(text);
}
