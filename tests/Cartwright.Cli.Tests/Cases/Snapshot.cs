using System.IO.Hashing;

namespace Cartwright.Cli.Tests.Cases;

/// <summary>Everything that lies in a folder at one moment.</summary>
internal sealed class Snapshot
{
    private readonly SortedDictionary<string, byte[]> _files = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _folders = new(StringComparer.Ordinal);

    private Snapshot()
    {
    }

    public static Snapshot Of(string root)
    {
        var snapshot = new Snapshot();
        foreach (var entry in new DirectoryInfo(root).EnumerateFileSystemInfos("*", SearchOption.AllDirectories))
        {
            var name = Path.GetRelativePath(root, entry.FullName).Replace('\\', '/');
            if (entry is FileInfo)
            {
                snapshot._files[name] = File.ReadAllBytes(entry.FullName);
            }
            else
            {
                snapshot._folders.Add(name);
            }
        }

        return snapshot;
    }

    public ReadOnlySpan<byte> this[string file] => _files[file];

    /// <summary>The files that are new or hold other bytes than before.</summary>
    public IReadOnlyList<string> ChangedSince(Snapshot before) =>
        [.. _files.Where(file => !before._files.TryGetValue(file.Key, out var old) || !old.AsSpan().SequenceEqual(file.Value)).Select(static file => file.Key)];

    /// <summary>What a run did to the folder, one line a file: nothing when it is as it was.</summary>
    public string Differences(Snapshot before, Redaction redaction)
    {
        var lines = ChangedSince(before).Select(name => Line(name, redaction.Bytes(_files[name])))
            .Concat(before._files.Keys.Except(_files.Keys).Select(static name => $"{name}  gone\n"))
            .Concat(before._folders.Except(_folders).Select(static name => $"{name}/  gone\n"))
            .Concat(_folders.Except(before._folders).Where(name => !_files.Keys.Any(file => file.StartsWith(name + "/", StringComparison.Ordinal))).Select(static name => $"{name}/  empty\n"));
        return string.Concat(lines.Order(StringComparer.Ordinal));
    }

    // CRC-32/ISO-HDLC, as zip and PNG use it.
    private static string Line(string name, byte[] bytes) => $"{name}  {bytes.Length} bytes  CRC-32 {Crc32.HashToUInt32(bytes):X8}\n";
}
