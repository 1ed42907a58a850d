using System.Globalization;
using Cartwright.Findings;

namespace Cartwright.Saves;

/// <summary>The life of one cell by the typical and by the maximum current, which may be far apart.</summary>
/// <param name="AmpereHours">The cell's capacity.</param>
/// <param name="SelfDischargePercent">What it loses by itself a year, in percent of its capacity.</param>
/// <param name="TypicalAmperes">What is typically drawn.</param>
/// <param name="MaximumAmperes">What is drawn at most; null when nobody said.</param>
public sealed record BatteryEstimate(decimal AmpereHours, decimal SelfDischargePercent, decimal TypicalAmperes, decimal? MaximumAmperes)
{
    /// <summary>The life to expect.</summary>
    public BatteryLife Typical => new(AmpereHours, TypicalAmperes, SelfDischargePercent);

    /// <summary>The life to promise; null when the maximum is not known.</summary>
    public BatteryLife? Maximum => MaximumAmperes is { } amperes ? new(AmpereHours, amperes, SelfDischargePercent) : null;

    /// <summary>Looks at what was given.</summary>
    /// <param name="log">Receives what there is to say.</param>
    public void Check(FindingLog log)
    {
        if (MaximumAmperes is null)
        {
            log.Add(BatteryFindings.NoMaximum, SourcePlace.None, "The years are those of the typical current only.");
        }
        else if (TypicalAmperes > MaximumAmperes)
        {
            log.Add(BatteryFindings.TypicalAboveMaximum, SourcePlace.None, string.Create(CultureInfo.InvariantCulture,
                $"The typical current is {TypicalAmperes * 1_000_000:0.######} uA, the maximum {MaximumAmperes * 1_000_000:0.######} uA."));
        }

        if (Typical.Years > BatteryLife.LongestCountedOn)
        {
            log.Add(BatteryFindings.LongerThanTheCell, SourcePlace.None, string.Create(CultureInfo.InvariantCulture, $"The reckoning gives {Typical.Years:0.0} years."));
        }
    }
}
