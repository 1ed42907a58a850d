namespace Cartwright.FaultSimulator;

/// <summary>The table of kinds: where each acts. In the order of the page that defines them.</summary>
public static class FaultStages
{
    private static readonly Dictionary<string, Stage> Table = new(StringComparer.Ordinal)
    {
        ["data-stuck-low"] = Stage.Data,
        ["data-stuck-high"] = Stage.Data,
        ["data-open"] = Stage.Data,
        ["data-shorted"] = Stage.Data,
        ["data-swapped"] = Stage.Data,
        ["data-permuted"] = Stage.Data,
        ["data-reversed"] = Stage.Data,
        ["data-inverted"] = Stage.Data,
        ["data-address-bridged"] = Stage.Data,
        ["address-stuck-low"] = Stage.Address,
        ["address-stuck-high"] = Stage.Address,
        ["address-open"] = Stage.Address,
        ["address-shorted"] = Stage.Address,
        ["address-swapped"] = Stage.Address,
        ["address-permuted"] = Stage.Address,
        ["address-inverted"] = Stage.Address,
        ["address-dead-while-writing"] = Stage.Landed,
        ["chip-too-small"] = Stage.Landed,
        ["bytes-swapped"] = Stage.File,
        ["words-swapped"] = Stage.File,
        ["lanes-exchanged"] = Stage.File,
        ["halves-exchanged"] = Stage.File,
        ["wrong-half"] = Stage.Board,
        ["banks-reordered"] = Stage.File,
        ["rotated"] = Stage.File,
        ["prefix-left-in"] = Stage.File,
        ["repeated"] = Stage.File,
        ["interleave-not-done"] = Stage.File,
        ["interleave-done-twice"] = Stage.File,
        ["blank"] = Stage.Cells,
        ["bus-not-driven"] = Stage.Bus,
        ["not-erased"] = Stage.Cells,
        ["under-programmed"] = Stage.Weak,
        ["cells-damaged"] = Stage.Cells,
        ["stopped-early"] = Stage.Sent,
        ["blocks-missing"] = Stage.Sent,
        ["sectors-unchanged"] = Stage.Cells,
        ["left-in-status-mode"] = Stage.Chip,
        ["chips-exchanged"] = Stage.File,
        ["other-image"] = Stage.File,
        ["file-damaged-as-text"] = Stage.File,
        ["read-too-early"] = Stage.Time,
        ["random-noise"] = Stage.Noise,
        ["bounce"] = Stage.Time,
        ["two-chips-enabled"] = Stage.Bus,
        ["bus-conflict"] = Stage.Board,
        ["latch-dead"] = Stage.Board,
        ["not-selected-range"] = Stage.Bus,
    };

    /// <summary>Every kind but <c>contact</c>, which acts where the fault inside it does.</summary>
    public static IReadOnlyCollection<string> Kinds => Table.Keys;

    public static Stage Of(Fault fault) => Table[fault.Kind];
}
