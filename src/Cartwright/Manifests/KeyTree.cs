using System.Collections.Immutable;
using Microsoft.Extensions.Configuration;

namespace Cartwright.Manifests;

/// <summary>The names directly below every key. Configuration looks through all keys for each such question; this looks through them once.</summary>
internal sealed class KeyTree
{
    private readonly Dictionary<string, ImmutableArray<string>> _names = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A tree of keys.</summary>
    /// <param name="keys">The keys, their parts joined by colons; of two spellings of a name the first counts.</param>
    public KeyTree(IEnumerable<string> keys)
    {
        var below = new Dictionary<string, List<string>>(StringComparer.OrdinalIgnoreCase);
        var known = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var key in keys)
        {
            for (var path = key; known.Add(path);)
            {
                var colon = path.LastIndexOf(':');
                var parent = path[..Math.Max(0, colon)];
                if (!below.TryGetValue(parent, out var names))
                {
                    below[parent] = names = [];
                }

                names.Add(path[(colon + 1)..]);
                if (colon < 0)
                {
                    break;
                }

                path = parent;
            }
        }

        foreach (var (path, names) in below)
        {
            // Numbers in order of number, so that a list keeps its order.
            _names[path] = [.. names.Distinct(StringComparer.OrdinalIgnoreCase).Order(ConfigurationKeyComparer.Instance)];
        }
    }

    /// <summary>The names directly below a key; none for a key that is not there.</summary>
    /// <param name="key">The key; empty for the whole document.</param>
    public ImmutableArray<string> Below(string key) => _names.GetValueOrDefault(key, []);
}
