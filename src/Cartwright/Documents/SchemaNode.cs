using Cartwright.Manifests;

namespace Cartwright.Documents;

/// <summary>The table of keys as a tree: what may stand under each key.</summary>
/// <param name="pattern">The node's own key; empty for the whole manifest.</param>
internal sealed class SchemaNode(string pattern)
{
    private const string AnyItem = "#";
    private const string AnyName = "*";

    private readonly List<SchemaNode> _children = [];

    /// <summary>The node's own key.</summary>
    public string Pattern => pattern;

    /// <summary>The last part of the key.</summary>
    public string Name => pattern[(pattern.LastIndexOf(':') + 1)..];

    /// <summary>The row that says what a single value here means; null where none can stand.</summary>
    public ManifestKey? Row { get; private set; }

    /// <summary>What a list's items are; null where there can be no list.</summary>
    public SchemaNode? Item => _children.Find(static child => child.Name == AnyItem);

    /// <summary>What stands under a name of the user's choice; null where there are no such names.</summary>
    public SchemaNode? Other => _children.Find(static child => child.Name == AnyName);

    /// <summary>The named members.</summary>
    public IEnumerable<SchemaNode> Members => _children.Where(static child => child.Name is not (AnyItem or AnyName));

    /// <summary>True where an object can stand.</summary>
    public bool IsObject => _children.Exists(static child => child.Name != AnyItem);

    /// <summary>True where the key must be there: it is marked so, or one of its members is.</summary>
    public bool IsRequired => Row?.Required == true || Members.Any(static member => member.IsRequired);

    /// <summary>What it means.</summary>
    public string? Meaning => Row?.Meaning ?? ManifestKeys.Groups.FirstOrDefault(group => group.Pattern == pattern)?.Meaning;

    /// <summary>The tree of all keys.</summary>
    public static SchemaNode Root()
    {
        var root = new SchemaNode("");
        foreach (var row in ManifestKeys.Rows)
        {
            root.Find(row.Pattern).Row = row;
        }

        return root;
    }

    // The node of a key, made with those above it when it is not there yet.
    private SchemaNode Find(string key)
    {
        var node = this;
        foreach (var name in key.Split(':'))
        {
            var next = node._children.Find(child => child.Name == name);
            if (next is null)
            {
                next = new SchemaNode(node.Pattern.Length == 0 ? name : $"{node.Pattern}:{name}");
                node._children.Add(next);
            }

            node = next;
        }

        return node;
    }
}
