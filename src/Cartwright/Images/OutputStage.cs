namespace Cartwright.Images;

/// <summary>
/// The stage inside an output folder: new files wait in <c>new</c>, the files they replace wait in <c>old</c>, and <c>fresh</c> lists
/// the files that replace none. As long as <c>old</c> is there, everything can be put back; renaming it to <c>done</c> is the one step that
/// makes the new output count.
/// </summary>
/// <param name="folder">The output folder.</param>
internal sealed class OutputStage(string folder)
{
    private readonly List<string> _names = [];

    private string New => Path.Combine(In(folder), "new");

    private string Old => Path.Combine(In(folder), "old");

    private string Done => Path.Combine(In(folder), "done");

    private string Fresh => Path.Combine(In(folder), "fresh");

    /// <summary>The stage of an output folder.</summary>
    /// <param name="folder">The output folder.</param>
    public static string In(string folder) => Path.Combine(folder, ".cartwright-stage");

    /// <summary>Puts back what a killed build left half moved, and makes the stage empty.</summary>
    /// <returns>True when there was something to put back.</returns>
    public bool Recover()
    {
        if (new DirectoryInfo(Old).LinkTarget is { } target)
        {
            throw new IOException($"{Old} is a link to {target}.");
        }

        var halfWay = Directory.Exists(Old);
        if (halfWay)
        {
            PutBack();
        }

        Clear();
        Directory.CreateDirectory(New);
        return halfWay;
    }

    /// <summary>Writes one file to wait.</summary>
    public void Add(OutputFile file)
    {
        using var stream = new FileStream(Path.Combine(New, file.Name), FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        file.WriteTo(stream);
        _names.Add(file.Name);
    }

    /// <summary>Moves every file into place; on any fault puts the earlier files back.</summary>
    public void Commit()
    {
        File.WriteAllLines(Fresh, _names.Where(name => !File.Exists(InPlace(name))));
        Directory.CreateDirectory(Old);
        try
        {
            foreach (var name in _names)
            {
                if (File.Exists(InPlace(name)))
                {
                    File.Move(InPlace(name), Path.Combine(Old, name));
                }

                File.Move(Path.Combine(New, name), InPlace(name));
            }

            Directory.Move(Old, Done);
        }
        catch
        {
            PutBack();
            throw;
        }

        Settle();
    }

    // From here the new output counts, and the stage takes the next.
    private void Settle()
    {
        Remove(Done);
        File.Delete(Fresh);
        _names.Clear();
    }

    /// <summary>Removes everything but files that are still to be put back.</summary>
    public void Clear()
    {
        Remove(Done);
        Remove(New);
        if (!Directory.Exists(Old))
        {
            File.Delete(Fresh);
        }
    }

    private string InPlace(string name) => Path.Combine(folder, name);

    // May be stopped at any point and begun again.
    private void PutBack()
    {
        foreach (var name in File.Exists(Fresh) ? File.ReadAllLines(Fresh) : [])
        {
            // The last part only: whatever the list holds, it names files of this folder.
            var moved = Path.GetFileName(name);
            if (File.Exists(InPlace(moved)) && !File.Exists(Path.Combine(New, moved)))
            {
                File.Delete(InPlace(moved));
            }
        }

        foreach (var file in Directory.EnumerateFiles(Old).ToList())
        {
            File.Move(file, InPlace(Path.GetFileName(file)), overwrite: true);
        }

        Directory.Delete(Old);
    }

    private static void Remove(string folder)
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
