using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>The options of <c>cartwright pattern</c>, each with the check of its form.</summary>
internal static class PatternOptions
{
    private const char RegionMark = '=';

    public static Option<string[]> Sizes()
    {
        var option = new Option<string[]>("--size") { Description = "Length of the board's regions, or of the chip: 512KiB, or prg=256KiB for one region of several.", HelpName = "size" };
        option.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => !ByteSize.TryParse(SizeOf(token.Value), out _)))
            {
                result.AddError($"--size takes {ByteSize.Forms}, or REGION=SIZE, not `{token.Value}`.");
            }
        });
        return option;
    }

    public static Option<string?> Size(string name, string description)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "size" };
        option.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(static token => !ByteSize.TryParse(token.Value, out var bytes) || bytes is <= 0 or > int.MaxValue))
            {
                result.AddError($"{name} takes {ByteSize.Forms}, not `{token.Value}`.");
            }
        });
        return option;
    }

    public static Option<string?> Number(string name, string description, long largest)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "number" };
        option.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(token => !Manifests.Number.TryParse(token.Value, out long value) || value < 0 || value > largest))
            {
                result.AddError($"{name} takes a number from 0 to {largest}, not `{token.Value}`.");
            }
        });
        return option;
    }

    public static Option<int?> Width()
    {
        var option = new Option<int?>("--width") { Description = "Data lines of the chip: 8 or 16; without it those of the part, or 8.", HelpName = "8|16" };
        option.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => token.Value is not ("8" or "16")))
            {
                result.AddError($"--width takes 8 or 16, not `{token.Value}`.");
            }
        });
        return option;
    }

    /// <summary>The sizes by region; the one without a name under the empty one.</summary>
    public static ImmutableDictionary<string, long> SizesOf(string[] words) =>
        words.Aggregate(ImmutableDictionary.Create<string, long>(StringComparer.OrdinalIgnoreCase), static (sizes, word) => sizes.SetItem(word[..Math.Max(0, word.IndexOf(RegionMark, StringComparison.Ordinal))], Bytes(SizeOf(word))));

    /// <summary>A size that has been checked.</summary>
    public static long Bytes(string word) => ByteSize.TryParse(word, out var bytes) ? bytes : 0;

    /// <summary>A number that has been checked; the other where none was given.</summary>
    public static long NumberOf(string? word, long otherwise) => word is not null && Manifests.Number.TryParse(word, out long value) ? value : otherwise;

    private static string SizeOf(string word) => word[(word.IndexOf(RegionMark, StringComparison.Ordinal) + 1)..];
}
