using System.Collections.Immutable;
using Cake.Core;
using Cake.Core.Annotations;
using Cake.Core.Diagnostics;
using Cake.Core.IO;
using Cartwright.Manifests;

namespace Cartwright.Cake;

/// <summary>Builds carts from manifests.</summary>
[CakeAliasCategory("Cartwright")]
[CakeNamespaceImport("Cartwright.Cake")]
public static class CartAliases
{
    /// <summary>Builds a cart, and writes its files as the manifest says.</summary>
    /// <param name="context">The script's context.</param>
    /// <param name="manifest">The <c>cart.json</c>.</param>
    /// <example><code>CartBuild("cart.json");</code></example>
    /// <exception cref="CakeException">A finding is an error; all findings are in the log, and nothing was written.</exception>
    [CakeMethodAlias]
    public static BuiltCart CartBuild(this ICakeContext context, FilePath manifest) => context.CartBuild(manifest, new CartSettings());

    /// <summary>Builds a cart, and writes its files.</summary>
    /// <param name="context">The script's context.</param>
    /// <param name="manifest">The <c>cart.json</c>.</param>
    /// <param name="settings">Where to, and what is laid over the manifest.</param>
    /// <example><code>CartBuild("cart.json", new CartSettings { OutputFolder = "release" });</code></example>
    /// <exception cref="CakeException">A finding is an error; all findings are in the log, and nothing was written.</exception>
    [CakeMethodAlias]
    public static BuiltCart CartBuild(this ICakeContext context, FilePath manifest, CartSettings settings)
    {
        var build = CartBuilder.Default.Build(new BuildRequest(manifest.MakeAbsolute(context.Environment).FullPath)
        {
            Overrides = ManifestOverrides.Of(context.Environment.GetEnvironmentVariables().ToImmutableDictionary(), settings.Settings),
            OutputFolder = settings.OutputFolder?.MakeAbsolute(context.Environment).FullPath,
        });
        FindingReport.Write(context, manifest.FullPath, build.Findings);
        var output = CartOutput.Write(build, settings.DryRun);
        FindingReport.Write(context, manifest.FullPath, output.Findings);
        context.Log.Write(Verbosity.Normal, LogLevel.Information, "{0}", $"{build.Manifest!.Cart.Name.Text}: {output.Files.Length} files in {build.OutputFolder}{Note(settings, output)}");
        return new BuiltCart(build, output);
    }

    private static string Note(CartSettings settings, CartOutputResult output) =>
        settings.DryRun ? " (not written)" : output.WasThere ? " (as they were)" : "";
}
