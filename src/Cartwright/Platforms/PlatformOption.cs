using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms;

/// <summary>A setting of the manifest's <c>header</c> that is no byte of its own but chooses the layout: where the header lies, how addresses map.</summary>
/// <param name="Name">The key.</param>
/// <param name="Values">The words it can be; the numbers do not count.</param>
/// <param name="Default">The word that counts when the key is absent.</param>
/// <param name="Meaning">What it chooses, one sentence.</param>
/// <param name="Source">Where the facts come from.</param>
public sealed record PlatformOption(string Name, ImmutableArray<NamedValue> Values, string Default, string Meaning, string Source)
{
    /// <summary>True when the manifest must state it: the bytes do not show it, and a wrong guess would make a cart that does not run. <see cref="Default"/> then only serves to go on checking.</summary>
    public bool Required { get; init; }
}
