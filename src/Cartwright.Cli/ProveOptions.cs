using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Cartwright.Manifests;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright.Cli;

/// <summary>The options of <c>cartwright prove</c> that have a form of their own, each with its check.</summary>
internal static class ProveOptions
{
    private const string InPlace = "in-place";
    private const string Elsewhere = "elsewhere";
    private const string Ram = "ram";

    public static Option<string[]> Units()
    {
        var option = new Option<string[]>("--unit") { Description = "A read of one of several units, as A=a.bin; once for each read.", HelpName = "name=file" };
        option.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => token.Value.Split('=', 2) is not [{ Length: > 0 }, { Length: > 0 }]))
            {
                result.AddError($"--unit takes NAME=FILE, not `{token.Value}`; for example --unit A=a.bin.");
            }
        });
        return option;
    }

    public static Option<string?> Numbers(string name, string description)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "numbers" };
        option.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(static token => NumbersOf(token.Value).Contains(0)))
            {
                result.AddError($"{name} takes numbers from 1 on, separated by commas, not `{token.Value}`; for example {name} 1,1,2.");
            }
        });
        return option;
    }

    public static Option<string[]> Ranges()
    {
        var option = new Option<string[]>("--may-differ") { Description = "Bytes of the read-back that may differ, as 0x7FF0+16.", HelpName = "offset+length" };
        option.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => RangeOf(token.Value) is null))
            {
                result.AddError($"--may-differ takes OFFSET+LENGTH, not `{token.Value}`; for example --may-differ 0x7FF0+16.");
            }
        });
        return option;
    }

    public static Option<string?> Written()
    {
        var option = new Option<string?>("--written") { Description = "How the chip was written: elsewhere (a programmer), in-place (through its board), ram (a memory, through its board); without it elsewhere.", HelpName = "how" };
        option.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => token.Value is not (InPlace or Elsewhere or Ram)))
            {
                result.AddError($"--written takes {Elsewhere}, {InPlace} or {Ram}, not `{token.Value}`.");
            }
        });
        return option;
    }

    public static Option<WordOrder?> Order() =>
        new("--word-order") { Description = "Order of the two bytes of a word in files of 16-bit chips; without it what the record says, or the bus's.", HelpName = "bus|programmer" };

    public static WritingWorld WorldOf(string? written, bool inPlace) =>
        written == Ram ? WritingWorld.RamInPlace : inPlace || written == InPlace ? WritingWorld.WrittenInPlace : WritingWorld.WrittenElsewhere;

    /// <summary>The numbers of a list; 0 for what is none.</summary>
    public static ImmutableArray<int> NumbersOf(string? text) =>
        text is null ? [] : [.. text.Split(',').Select(static word => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0)];

    public static ByteRange? RangeOf(string text) =>
        text.Split('+') is [var offset, var length] && Number.TryParse(offset, out long start) && Number.TryParse(length, out long bytes)
        && start is >= 0 and <= int.MaxValue && bytes is > 0 and <= int.MaxValue
            ? new ByteRange((int)start, (int)bytes) : null;

    public static ProofRead UnitRead(string word) => word.Split('=', 2) is [var unit, var file] ? new ProofRead(file, unit) : new ProofRead(word);
}
