namespace Cartwright.Chips;

/// <summary>What a part needs at its supply pin while it is read, and what its inputs stand.</summary>
public sealed record PartSupply
{
    /// <summary>Lowest supply, in volts.</summary>
    public required double MinVolts { get; init; }

    /// <summary>Highest supply, in volts.</summary>
    public required double MaxVolts { get; init; }

    /// <summary>The range with its remarks, in volts, for example <c>1.8-5.5 (grade dependent)</c>.</summary>
    public required string Text { get; init; }

    /// <summary>The class that follows from the range.</summary>
    public required SupplyClass Class { get; init; }

    /// <summary>Whether the inputs stand 5 V.</summary>
    public required FiveVoltTolerance FiveVoltTolerantInputs { get; init; }

    /// <summary>What that answer rests on; <c>unknown</c> exactly when the answer is unknown.</summary>
    public required string FiveVoltSource { get; init; }

    /// <summary>True when the part may be fed with this supply.</summary>
    /// <param name="volts">The supply, in volts.</param>
    public bool Covers(double volts) => volts >= MinVolts && volts <= MaxVolts;
}
