namespace Cartwright.Platforms.MasterSystem;

/// <summary>The Game Gear.</summary>
public sealed class GameGearPlatform() : SegaPlatform(SegaHeader.GameGear, [SegaMapper.Sega, SegaMapper.Linear, SegaMapper.ThreeRegister])
{
    /// <inheritdoc/>
    public override PlatformFacts Facts => GameGearFacts.Facts;

    /// <inheritdoc/>
    protected internal override bool HasPauseButton => false;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "gg";

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => SegaRecognition.Marked(file, this);

    /// <inheritdoc/>
    protected internal override bool Owns(int region) => region is 5 or 6 or 7;
}
