namespace Cartwright.Platforms.MasterSystem;

/// <summary>The Master System.</summary>
public sealed class MasterSystemPlatform() : SegaPlatform(
    SegaHeader.MasterSystem,
    [SegaMapper.Sega, SegaMapper.Linear, SegaMapper.ThreeRegister, SegaMapper.OneRegister, SegaMapper.FourRegister])
{
    /// <inheritdoc/>
    public override PlatformFacts Facts => MasterSystemFacts.Facts;

    /// <inheritdoc/>
    protected internal override bool HasPauseButton => true;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "sms";

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        SegaRecognition.Marked(file, this) ?? SegaRecognition.Unmarked(file, int.MaxValue);

    /// <inheritdoc/>
    protected internal override bool Owns(int region) => region is 3 or 4;
}
