using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;
using Task = Microsoft.Build.Utilities.Task;

namespace Cartwright.MSBuild;

/// <summary>Finds out for each cart which files decide whether it is up to date.</summary>
public sealed class FindCarts : Task
{
    /// <summary>The manifests; `OutputFolder` and `Settings` of each are read.</summary>
    [Required]
    public ITaskItem[] Manifests { get; set; } = [];

    /// <summary>Folder for what is kept from one build to the next.</summary>
    [Required]
    public string StateFolder { get; set; } = "";

    /// <summary>Every file that a cart's stamp must be newer than, with the cart's own values as metadata.</summary>
    [Output]
    public ITaskItem[] Watched { get; private set; } = [];

    /// <summary>Every file that building carts has left behind.</summary>
    [Output]
    public ITaskItem[] Made { get; private set; } = [];

    /// <inheritdoc/>
    public override bool Execute()
    {
        var carts = Manifests.Select(item => (Item: item, Path: item.GetMetadata("FullPath"))).Select(cart => (cart.Item, cart.Path, State: new CartState(StateFolder, cart.Path))).ToList();
        foreach (var (item, path, state) in carts)
        {
            CartState.WriteIfOther(state.Request, Request(item, path));
        }

        Watched = [.. carts.SelectMany(cart => Watch(cart.Item, cart.Path, cart.State))];
        Made = [.. carts.SelectMany(static cart => CartState.Lines(cart.State.Stamp).Concat([cart.State.Request, cart.State.Read, cart.State.Stamp])).Select(static file => new TaskItem(file))];
        return true;
    }

    private static List<string> Request(ITaskItem item, string path) =>
    [
        $"cartwright {LibraryVersion.Text}", path, item.GetMetadata("OutputFolder"),
        .. CartSettings.Overrides(CartSettings.Words(item.GetMetadata("Settings"))).ByKey.Select(static pair => $"{pair.Key}={pair.Value}"),
    ];

    private IEnumerable<TaskItem> Watch(ITaskItem item, string path, CartState state) =>
        CartState.Lines(state.Read).Concat(CartState.Lines(state.Stamp)).Concat([path, state.Request]).Select(file =>
        {
            var watched = new TaskItem(file);
            watched.SetMetadata("Stamp", state.Stamp);
            watched.SetMetadata("Manifest", path);
            watched.SetMetadata("OutputFolder", item.GetMetadata("OutputFolder"));
            watched.SetMetadata("Settings", item.GetMetadata("Settings"));
            watched.SetMetadata("StateFolder", StateFolder);
            return watched;
        });
}
