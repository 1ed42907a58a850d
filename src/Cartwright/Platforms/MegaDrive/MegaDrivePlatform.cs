using System.Collections.Immutable;
using System.Text;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Mega Drive / Genesis.</summary>
public sealed class MegaDrivePlatform : Platform
{
    private const string Linear = "linear";
    private const string Paged = "pages";

    private static readonly PlatformOption Mapper = new("mapper",
        [
            new NamedValue(0, Linear, "up to 4 MiB, all of it at its own address"),
            new NamedValue(1, Paged, "pages of 512 KiB, switched at $A130F3-$A130FF"),
        ],
        Linear, "Whether the board switches pages; left out, a stated systemType of `SEGA SSF` chooses them.", "Going beyond 4MB");

    private static readonly ImmutableArray<long> Customary =
        [128 << 10, 256 << 10, 512 << 10, 1 << 20, 2 << 20, MegaDriveAddresses.WindowEnd];

    /// <summary>Sizes without the page mapper.</summary>
    internal static SizeRule LinearSizes { get; } = new(Customary, 2,
        "128, 256 or 512 KiB, 1, 2 or 4 MiB; stated, any even length from 512 bytes to 4 MiB; more with `header.mapper` set to `pages`")
    {
        Smallest = MegaDriveChecksum.Start,
    };

    private static readonly SizeRule PagedSizes = new([.. Customary, .. Enumerable.Range(9, 8).Select(static page => (long)page * MegaDriveAddresses.PageSize)], 2,
        "128, 256 or 512 KiB, 1, 2 or 4 MiB, or whole pages of 512 KiB up to 8 MiB; stated, any even length from 512 bytes to 8 MiB")
    {
        Smallest = MegaDriveChecksum.Start,
    };

    /// <inheritdoc/>
    public override PlatformFacts Facts => MegaDriveFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => MegaDriveFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapper];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } =
    [
        Make(Linear, LinearSizes, "SEGA MEGA DRIVE", pages: false),
        Make(Paged, PagedSizes, MegaDriveHeader.BankSystem, pages: true),
    ];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var paged = settings[Mapper.Name] is null && settings["systemType"]?.Text.Trim() == MegaDriveHeader.BankSystem;
        var word = paged ? Paged : Word(settings, Mapper);
        return Layouts.First(layout => layout.Variant == word);
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => MegaDriveRecognition.Recognise(file);

    /// <inheritdoc/>
    public override long? SaveSize(CartView cart) =>
        cart.Headers.SelectMany(static header => header.Entries).FirstOrDefault(static entry => entry.Field.Name == "saveMemory") is { } entry
        && SaveMemory.FromBlock(entry.Raw.AsSpan()) is { Kind: not SaveKind.Eeprom, Size: > 0 and var size } ? size : null;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "md";

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => CheckAll(cart, log);

    /// <summary>All checks of this platform, which hold for consoles built upon it as well.</summary>
    /// <param name="cart">The finished ROM.</param>
    /// <param name="log">Receives what is wrong.</param>
    internal static void CheckAll(CartView cart, FindingLog log)
    {
        var view = new MegaDriveCart(cart);
        if (ProgramOrder.Check(view, log))
        {
            VectorChecks.Check(view, log);
        }

        TextChecks.Check(view, log);
        RangeChecks.Check(view, log);
        SaveChecks.Check(view, log);
    }

    /// <summary>The layout an image shows: pages where it says so or is larger than the console's window.</summary>
    /// <param name="systemType">The header's system type.</param>
    /// <param name="length">The image's length in bytes.</param>
    internal static string VariantOf(ReadOnlySpan<byte> systemType, long length) =>
        length > MegaDriveAddresses.WindowEnd || Encoding.ASCII.GetString(systemType).Trim() == MegaDriveHeader.BankSystem ? Paged : Linear;

    private static PlatformLayout Make(string variant, SizeRule sizes, string system, bool pages) => new(variant,
        [new RegionRule(MegaDriveHeader.Region, sizes, "vectors, header, program and data")],
        [MegaDriveHeader.Table(system)],
        new MegaDriveAddresses(pages))
    {
        Vectors = [MegaDriveVectors.Table],
    };
}
