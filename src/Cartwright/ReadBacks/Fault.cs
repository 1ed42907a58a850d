using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>One thing that is wrong.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Lines">The lines it is on: <c>A12</c>, <c>D3</c>; counted in words of the chip.</param>
/// <param name="Parameters">Its parameters.</param>
public sealed record Fault(FaultKind Kind, ImmutableArray<string> Lines, ImmutableArray<FaultParameter> Parameters)
{
    /// <summary>A fault that has no lines.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="parameters">Its parameters.</param>
    public static Fault Of(FaultKind kind, params ImmutableArray<FaultParameter> parameters) => new(kind, [], parameters);

    /// <summary>A fault on lines.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="parameters">Its parameters.</param>
    public static Fault On(FaultKind kind, ImmutableArray<string> lines, params ImmutableArray<FaultParameter> parameters) => new(kind, lines, parameters);

    /// <summary>The JSON text of a parameter; null when the fault has none of that name.</summary>
    /// <param name="parameter">The parameter's name.</param>
    public string? this[string parameter] => Parameters.FirstOrDefault(row => row.Name == parameter)?.Json;

    /// <summary>The fault in one line: <c>address-stuck-low A12</c>.</summary>
    public override string ToString() =>
        string.Join(' ', [Kind.Name, .. Lines, .. Parameters.Select(static row => $"{row.Name}={row.Text}")]);

    /// <summary>Whether both say the same, lists compared by their members.</summary>
    /// <param name="other">The other fault.</param>
    public bool Equals(Fault? other) => other is not null && ToString() == other.ToString();

    /// <summary>The hash that goes with <see cref="Equals(Fault?)"/>.</summary>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(ToString());
}
