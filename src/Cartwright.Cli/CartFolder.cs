using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>Folders that are to hold a cart.</summary>
internal static class CartFolder
{
    /// <summary>Whether nothing is in the way; a finding when something is.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="remedy">What to do when it is in use; null for what the rule says.</param>
    /// <param name="log">Receives what is in the way.</param>
    public static bool IsFree(string folder, string? remedy, FindingLog log)
    {
        var taken = File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any());
        if (taken)
        {
            log.Add(InspectionFindings.FolderInUse, new SourcePlace(folder), $"There is something at {folder} already.", remedy: remedy);
        }

        return !taken;
    }

    /// <summary>A name for the cart in it.</summary>
    public static string NameOf(string folder)
    {
        var name = string.Concat(Path.GetFileName(folder).Select(static letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' or '.' ? letter : '-')).Trim('.', '-');
        return FileNameRule.Problem(name) is null ? name : "cart";
    }
}
