using Cake.Core.IO;

namespace Cartwright.Cake;

/// <summary>How a cart is built.</summary>
public sealed record CartSettings
{
    /// <summary>Output folder in place of the manifest's.</summary>
    public DirectoryPath? OutputFolder { get; init; }

    /// <summary>Values laid over the manifest, by key: <c>["cart:revision"] = "2"</c>.</summary>
    public IReadOnlyDictionary<string, string> Settings { get; init; } = new Dictionary<string, string>();

    /// <summary>True to do everything but write files.</summary>
    public bool DryRun { get; init; }
}
