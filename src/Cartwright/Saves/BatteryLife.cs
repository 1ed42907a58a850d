using System.Globalization;

namespace Cartwright.Saves;

/// <summary>How long a cell feeds a save memory while the console is off.</summary>
/// <remarks>Years = ampere-hours / (8760 x amperes): STMicroelectronics, battery capacity consumption, design support for real-time clocks.
/// Self-discharge of about 1 % of the capacity a year: time-nuts list, March 2015, on coin cells; it is counted here as a current that never stops.</remarks>
/// <param name="AmpereHours">The cell's capacity, above 0.</param>
/// <param name="Amperes">What the memory and its supervisor draw while the console is off, above 0.</param>
/// <param name="SelfDischargePercent">What the cell loses by itself a year, in percent of its capacity.</param>
public sealed record BatteryLife(decimal AmpereHours, decimal Amperes, decimal SelfDischargePercent)
{
    /// <summary>The self-discharge of a lithium coin cell, in percent a year, where nobody states another.</summary>
    public const decimal UsualSelfDischarge = 1m;

    /// <summary>Years beyond which no cell should be counted on, whatever the reckoning says.</summary>
    public const int LongestCountedOn = 20;

    private const decimal HoursAYear = 8760m;

    /// <summary>Reads a self-discharge.</summary>
    /// <param name="text">Percent a year with its sign: <c>1%</c>, <c>0.5 %</c>.</param>
    /// <returns>The percent, 0 to 100; null when the text is none.</returns>
    public static decimal? ParsePercent(string text) =>
        text.Trim() is [.. var number, '%'] && decimal.TryParse(number.TrimEnd(' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent <= 100
            ? percent
            : null;

    /// <summary>Years by the current alone.</summary>
    public decimal YearsOnPaper => AmpereHours / (HoursAYear * Amperes);

    /// <summary>Years with self-discharge counted in.</summary>
    public decimal Years => AmpereHours / ((HoursAYear * Amperes) + (AmpereHours * SelfDischargePercent / 100m));
}
