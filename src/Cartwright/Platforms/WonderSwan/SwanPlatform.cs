using System.Collections.Immutable;
using Cartwright.Checksums;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>WonderSwan and WonderSwan Color.</summary>
public sealed class SwanPlatform : Platform
{
    private const int BankSize = 64 << 10;

    private static readonly SizeRule Sizes = new(
        [128 << 10, 256 << 10, 512 << 10, 1 << 20, 2 << 20, 3 << 20, 4 << 20, 6 << 20, 8 << 20, 16 << 20, 32 << 20, 64 << 20], 0,
        "128, 256 or 512 KiB, 1, 2, 3, 4, 6, 8, 16, 32 or 64 MiB; stated, also 64 KiB, which has no size code")
    {
        Smallest = BankSize,
        OnlyStated = [BankSize],
    };

    private static readonly PlatformLayout Only = new("ws",
        [new RegionRule(SwanHeader.Region, Sizes, "program, data and footer") { Align = RegionAlign.End }],
        [SwanHeader.Table], new SwanAddresses());

    /// <inheritdoc/>
    public override PlatformFacts Facts => SwanFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => SwanFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts => [Only];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => Only;

    /// <inheritdoc/>
    public override long? SaveSize(CartView cart) => SizeIn(cart["save"]);

    /// <inheritdoc/>
    public override string Extension(CartView cart) => cart["console"] == "color" ? "wsc" : "ws";

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (file.Length < BankSize || file.Length % BankSize != 0)
        {
            return null;
        }

        var footer = file[^SwanHeader.Length..];
        var fits = SwanJump.Target(footer) is { } target && SwanJump.IsInside(target, file.Length)
            && (footer[5] & 0x0F) == 0 && footer[7] <= 1 && footer[0x0A] <= 0x0B && footer[0x0D] <= 1 && IsSave(footer[0x0B]);
        // The sum takes the whole file: not where the footer has said no.
        var right = fits && ByteSum.Sum16(file[..^2]) == (footer[^2] | (footer[^1] << 8));
        return !fits ? null
            : right ? new RecognitionClaim(Certainty.Exact, "a footer with a jump into the ROM, and its checksum is right")
            : new RecognitionClaim(Certainty.Structural, "a footer with a jump into the ROM; its checksum is not right, which is common");
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new SwanChecks(cart, log).Run();

    private static bool IsSave(byte code) => code is <= 0x05 or 0x10 or 0x20 or 0x50;
}
