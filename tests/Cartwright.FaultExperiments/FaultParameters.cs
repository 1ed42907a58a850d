using System.Collections.Immutable;
using System.Text.Json;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Reads the parameters of a fault by their names in a verdict.</summary>
internal static class FaultParameters
{
    public static Fault With(Fault fault, string name, JsonElement value) => name switch
    {
        "map" => fault with { Map = Numbers(value) },
        "wins" => fault with { Wins = value.GetString()! },
        "follows" => fault with { Follows = value.GetString()! },
        "run" => fault with { Run = value.GetInt32() },
        "ones" => fault with { Ones = value.GetDouble() },
        "within" => fault with { Within = value.GetString()! },
        "reading" => fault with { Reading = value.GetString()! },
        "size" => fault with { Size = value.GetInt32() },
        "holds" => fault with { Holds = value.GetString()! },
        "order" => fault with { Order = Numbers(value) },
        "bankSize" => fault with { BankSize = value.GetInt32() },
        "bank" => fault with { Bank = value.GetInt32() },
        "values" => fault with { Values = Numbers(value) },
        "by" => fault with { By = value.GetInt32() },
        "length" => fault with { Length = value.GetInt32() },
        "prefix" => fault with { Prefix = [.. Convert.FromHexString(value.GetString()!)] },
        "period" => fault with { Period = value.GetInt32() },
        "lanes" => fault with { Lanes = value.GetInt32() },
        "unit" => fault with { Unit = value.GetInt32() },
        "value" => fault with { Value = value.GetInt32() },
        "shows" when value.ValueKind == JsonValueKind.Number => fault with { ShowsOne = value.GetDouble() },
        "shows" => fault with { Shows = value.GetString()! },
        "shift" => fault with { Shift = value.GetInt32() },
        "share" => fault with { Share = value.GetDouble() },
        "at" => fault with { At = value.GetInt32() },
        "start" => fault with { Start = value.GetInt32() },
        "blocks" => fault with { Blocks = [.. value.EnumerateArray().Select(static block => (block[0].GetInt32(), block[1].GetInt32()))] },
        "sectorSize" => fault with { SectorSize = value.GetInt32() },
        "sectors" => fault with { Sectors = Numbers(value) },
        "mode" => fault with { Mode = value.GetString()! },
        "table" => fault with { Table = Numbers(value) },
        "how" => fault with { How = value.GetString()! },
        "rate" => fault with { Rate = value.GetDouble() },
        "readsAs" => fault with { ReadsAs = value.GetInt32() },
        "threshold" => fault with { Threshold = value.GetInt32() },
        "badInsertions" => fault with { BadInsertions = Numbers(value) },
        "inner" => fault with { Inner = Inner(value) with { Lines = fault.Lines } },
        // Whose image it is: the judge takes the one that was drawn.
        "image" or "site" or "pins" => fault,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no parameter of any kind"),
    };

    private static Fault Inner(JsonElement value) =>
        value.ValueKind == JsonValueKind.String
            ? new Fault(value.GetString()!)
            : value.EnumerateObject().Where(static member => member.Name != "kind").Aggregate(
                new Fault(value.GetProperty("kind").GetString()!), static (fault, member) => With(fault, member.Name, member.Value));

    private static ImmutableArray<int> Numbers(JsonElement value) => [.. value.EnumerateArray().Select(static number => number.GetInt32())];
}
