using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The program's entry address, which some boot codes want raised in the header.</summary>
/// <param name="shift">By how much.</param>
internal sealed class EntryAddress(uint shift) : ValueText
{
    /// <inheritdoc/>
    public override ValueForm Form => ValueForm.Number;

    /// <inheritdoc/>
    public override string Expected => "an address such as 0x80000400";

    /// <inheritdoc/>
    public override string Format(ulong value) => "0x" + ((uint)value - shift).ToString("X8", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value)
    {
        // What is too large for the field stays so, for the codec to say.
        var read = Number.TryParse(text, out ulong address);
        value = address > uint.MaxValue ? address : (uint)address + shift;
        return read;
    }
}
