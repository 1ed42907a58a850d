using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Finds keys that no row of a key table knows.</summary>
internal static class KeyCheck
{
    /// <summary>Adds a finding for each key below <paramref name="section"/> that no pattern matches.</summary>
    public static void Run(ManifestSection section, IEnumerable<string> patterns, FindingLog log)
    {
        var root = new Node();
        foreach (var pattern in patterns)
        {
            root.Add(pattern.Split(':'));
        }

        Check(section, root, log);
    }

    private static void Check(ManifestSection section, Node node, FindingLog log)
    {
        foreach (var child in section.Sections)
        {
            if (node.Find(child.Name) is { } next)
            {
                CheckValue(child, next, log);
                Check(child, next, log);
            }
            else if (!node.IsLeaf)
            {
                log.Add(ManifestFindings.UnknownKey, child.Place, $"There is no key `{child.Path}`.", node.Expected, NearestName.Question(child.Name, node.Names));
            }
        }
    }

    // A single value where a list or a group belongs would be ignored in silence like a mistyped key.
    private static void CheckValue(ManifestSection section, Node node, FindingLog log)
    {
        if (!node.TakesValue && section.Value is { Text.Length: > 0 } value)
        {
            log.Add(ManifestFindings.WrongType, value.Place, $"`{section.Path}` is the single value `{value.Text}`.", node.Expected);
        }
    }

    private sealed class Node
    {
        private readonly SortedDictionary<string, Node> _members = new(StringComparer.OrdinalIgnoreCase);

        public IEnumerable<string> Names => _members.Keys.Where(static name => name is not ("#" or "*"));

        // A list has no names to choose from.
        public string Expected => Names.Any() ? $"one of {string.Join(", ", Names)}" : _members.ContainsKey("#") ? "a list" : "a group of keys";

        // True where a pattern ends.
        public bool TakesValue { get; private set; }

        // Below a leaf only the typed reading can say what is wrong.
        public bool IsLeaf => _members.Count == 0;

        public void Add(ReadOnlySpan<string> path)
        {
            if (path.IsEmpty)
            {
                TakesValue = true;
            }
            else
            {
                if (!_members.TryGetValue(path[0], out var next))
                {
                    _members[path[0]] = next = new Node();
                }

                next.Add(path[1..]);
            }
        }

        public Node? Find(string name) =>
            _members.GetValueOrDefault(name)
            ?? (name.Length > 0 && name.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0 ? _members.GetValueOrDefault("#") : null)
            ?? _members.GetValueOrDefault("*");
    }
}
