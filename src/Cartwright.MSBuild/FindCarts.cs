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
        Watched = [.. Manifests.SelectMany(Watch)];
        Made = [.. CartState.Everything(StateFolder).Select(static file => new TaskItem(file))];
        return true;
    }

    private IEnumerable<TaskItem> Watch(ITaskItem item)
    {
        var (manifest, folder, settings) = (item.GetMetadata("FullPath"), item.GetMetadata("OutputFolder"), item.GetMetadata("Settings"));
        var state = new CartState(StateFolder, manifest, folder, settings);
        state.Ask([$"cartwright {LibraryVersion.Text}", .. CartSettings.Overrides(CartSettings.Words(settings)).ByKey.Select(static pair => $"{pair.Key}={pair.Value}")]);
        return state.Watched().Select(file => new TaskItem(file, new Dictionary<string, string>
        {
            ["Manifest"] = manifest,
            ["OutputFolder"] = folder,
            ["Settings"] = settings,
            ["StateFolder"] = StateFolder,
            ["Stamp"] = state.Stamp,
        }));
    }
}
