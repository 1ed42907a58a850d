using System.Globalization;
using Cartwright.Chips;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright.Cli;

/// <summary>Names the pins that a fault is at.</summary>
internal static class PinText
{
    /// <summary>The pin of a line with those beside it, in the first package of the part; in the others the pin alone.</summary>
    public static string Of(ProofSubject subject, string line) => subject.PinsOf(line) switch
    {
        [] => subject.Part is null ? "name the part with --part to learn the pin" : "the catalogue has no pin-out of this part",
        [var first, .. var others] => string.Create(CultureInfo.InvariantCulture,
            $"{subject.Site} pin {first.Pin} ({first.PinOut.Package}), beside {string.Join(" and ", first.Neighbours.Select(other => Pin(first.PinOut, other)))}{string.Concat(others.Select(static pin => string.Create(CultureInfo.InvariantCulture, $"; pin {pin.Pin} of {pin.PinOut.Package}")))}"),
    };

    /// <summary>A word of caution where a pin-out was not seen in a data sheet; null where all were.</summary>
    public static string? Caution(ProofSubject subject, Fault fault)
    {
        var unseen = fault.Lines.SelectMany(line => subject.PinsOf(line)).Select(static pin => pin.PinOut).Where(static pinOut => pinOut.Caution is not null).DistinctBy(static pinOut => pinOut.Name).ToList();
        return unseen.Count == 0 ? null
            : $"Caution: {unseen[0].Package}: {unseen[0].Caution}{(unseen.Count == 1 ? "" : $"; so for {string.Join(", ", unseen.Skip(1).Select(static pinOut => pinOut.Package))}")}.";
    }

    /// <summary>Which pins of a fault lie side by side: there solder bridges first.</summary>
    public static IEnumerable<string> Beside(ProofSubject subject, Fault fault)
    {
        var pins = fault.Lines.SelectMany(line => subject.PinsOf(line)).ToList();
        return
            from first in pins
            from second in pins
            where first.Pin < second.Pin && first.IsBeside(second)
            select string.Create(CultureInfo.InvariantCulture, $"Pins {first.Pin} and {second.Pin} of {first.PinOut.Package} lie side by side.");
    }

    private static string Pin(PinOut pinOut, int pin) => string.Create(CultureInfo.InvariantCulture, $"pin {pin} ({pinOut.SignalAt(pin)})");
}
