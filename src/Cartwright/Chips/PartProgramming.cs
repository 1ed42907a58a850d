using System.Globalization;

namespace Cartwright.Chips;

/// <summary>How a part is written.</summary>
public sealed record PartProgramming
{
    // Above every supply of the catalogue (5.5 V), below every programming voltage (10 V and more).
    private const double HighVolts = 6;

    /// <summary>The unit of one write, in words, for example <c>byte/word; 32-byte buffer</c>.</summary>
    public required string Granularity { get; init; }

    /// <summary>Typical time for one such unit, in microseconds with remarks; blank when unknown.</summary>
    public required string TypicalMicroseconds { get; init; }

    /// <summary>Programming voltage beside the supply, in volts with remarks; blank when none is needed.</summary>
    public required string ProgrammingVoltage { get; init; }

    /// <summary>The family of write and erase commands.</summary>
    public required string CommandSet { get; init; }

    /// <summary>Whether the part answers the Common Flash Interface query: <c>yes</c>, <c>no</c>, <c>n/a</c>, with remarks.</summary>
    public required string CommonFlashInterface { get; init; }

    /// <summary>True when the part cannot be written without a voltage well above its supply.</summary>
    public bool NeedsHighVoltage =>
        !ProgrammingVoltage.Contains("optional", StringComparison.Ordinal) && LeadingVolts > HighVolts;

    private double LeadingVolts
    {
        get
        {
            var end = ProgrammingVoltage.IndexOf(' ', StringComparison.Ordinal);
            var first = end < 0 ? ProgrammingVoltage : ProgrammingVoltage[..end];
            return double.TryParse(first, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var volts) ? volts : 0;
        }
    }
}
