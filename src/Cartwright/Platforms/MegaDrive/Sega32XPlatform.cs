using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The 32X, an adapter on the Mega Drive: the same cartridge, with a module header and a start-up block.</summary>
public sealed class Sega32XPlatform : Platform
{
    /// <summary>The usual system type.</summary>
    internal const string SystemType = "SEGA 32X";

    private static readonly SizeRule Sizes = MegaDrivePlatform.LinearSizes with
    {
        Words = "128, 256 or 512 KiB, 1, 2 or 4 MiB; stated, any even length from 2 KiB to 4 MiB",
        Smallest = ModuleHeader.UserCode,
    };

    private static readonly PlatformLayout Only = new(Sega32XFacts.Facts.Id,
        [new RegionRule(MegaDriveHeader.Region, Sizes, "vectors, headers, start-up block, programs and data")],
        // The checksum covers the module header, so that is written first.
        [ModuleHeader.Table, MegaDriveHeader.Table(SystemType)],
        new Sega32XAddresses())
    {
        Vectors = [MegaDriveVectors.Table],
        Places =
        [
            new NamedPlace("startUp", MegaDriveHeader.Region, ModuleHeader.StartUp, ModuleHeader.UserCode - ModuleHeader.StartUp,
                "the start-up block, which you bring yourself; it is kept as it is, and compared where another program holds it too"),
        ],
    };

    /// <inheritdoc/>
    public override PlatformFacts Facts => Sega32XFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => Sega32XFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts => [Only];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => Only;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "32x";

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => Sega32XRecognition.Recognise(file, MegaDriveFacts.Facts.Id, Only.Variant);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        MegaDrivePlatform.CheckAll(cart, log);
        // Of a program in another order of bytes nothing more can be said.
        if (ProgramOrder.Recognise(new MegaDriveCart(cart)) is null)
        {
            new Sega32XChecks(cart, log).Run();
        }
    }
}
