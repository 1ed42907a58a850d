namespace Cartwright.Patching;

/// <summary>What a patch says of itself, read without applying it.</summary>
/// <param name="Format">Its format.</param>
/// <param name="BaseSize">Bytes of the base it was made for; null when it does not say.</param>
/// <param name="BaseCrc">CRC-32 of that base; null when it does not say.</param>
/// <param name="ResultSize">Bytes of the result; null when it does not say.</param>
/// <param name="ResultCrc">CRC-32 of the result; null when it does not say.</param>
/// <param name="Text">The author's text (BPS metadata, VCDIFF application header), at most its first 64 KiB; to be shown, never used as a path.</param>
public sealed record PatchStatement(
    PatchFormat Format,
    long? BaseSize = null,
    uint? BaseCrc = null,
    long? ResultSize = null,
    uint? ResultCrc = null,
    string? Text = null)
{
    private const int LongestText = 0x1_0000;

    internal static string? ToText(ReadOnlySpan<byte> bytes) =>
        bytes.IsEmpty ? null : System.Text.Encoding.UTF8.GetString(bytes[..Math.Min(LongestText, bytes.Length)]);
}
