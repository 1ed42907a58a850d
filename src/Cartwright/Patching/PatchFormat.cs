using System.Collections.Immutable;

namespace Cartwright.Patching;

/// <summary>One format of patch files: a row of <see cref="PatchFormats"/>.</summary>
public sealed class PatchFormat
{
    internal PatchFormat(string name, string ending, ReadOnlySpan<byte> magic, PatchApply apply, PatchDescribe describe, PatchMake? make)
    {
        (Name, Ending, Magic) = (name, ending, [.. magic]);
        (ApplyIt, DescribeIt, MakeIt) = (apply, describe, make);
    }

    /// <summary>The format's name: <c>BPS</c>.</summary>
    public string Name { get; }

    /// <summary>The usual ending of its files: <c>.bps</c>.</summary>
    public string Ending { get; }

    /// <summary>The bytes every file of the format begins with.</summary>
    public ImmutableArray<byte> Magic { get; }

    /// <summary>True when <see cref="Patch.Make"/> can make patches of this format.</summary>
    public bool CanMake => MakeIt is not null;

    internal PatchApply ApplyIt { get; }

    internal PatchDescribe DescribeIt { get; }

    internal PatchMake? MakeIt { get; }

    /// <summary>The format's name.</summary>
    public override string ToString() => Name;
}
