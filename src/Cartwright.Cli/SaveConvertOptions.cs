using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary>The options of <c>cartwright save convert</c>.</summary>
internal sealed class SaveConvertOptions
{
    private readonly Option<string> _from = new("--from") { Description = $"How the file is written: {SaveForm.Words}.", HelpName = "layout", Required = true };
    private readonly Option<string> _to = new("--to") { Description = "How the result is to be written.", HelpName = "layout", Required = true };
    private readonly Option<string?> _size = PatternOptions.Size("--size", "Bytes of the memory itself: contents are lengthened, or cut where only filler is cut.");
    private readonly Option<string?> _pad = new("--pad") { Description = "What lengthens contents: a byte, or `repeat` for the contents again; without it 0xFF.", HelpName = "byte|repeat" };
    private readonly Option<bool> _dropClock = new("--drop-clock") { Description = "Lets the record of the clock go; it is the one loss that can be asked for." };
    private readonly Option<string?> _fromAddress = Lines("--from-address-lines", "Address lines of the board the file was read from");
    private readonly Option<string?> _fromData = Lines("--from-data-lines", "Data lines of the board the file was read from");
    private readonly Option<string?> _toAddress = Lines("--to-address-lines", "Address lines of the board the result is for");
    private readonly Option<string?> _toData = Lines("--to-data-lines", "Data lines of the board the result is for");

    public SaveConvertOptions() =>
        _pad.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => PadOf(token.Value) is null))
            {
                result.AddError($"--pad takes a byte such as 0xFF, or {SavePad.RepeatWord}, not `{token.Value}`.");
            }
        });

    public Argument<string> File { get; } = new("file") { Description = "The save." };

    public Option<string> Platform { get; } = new("--platform") { Description = "The platform of the cartridge.", HelpName = "id", Required = true };

    public Option<string> Target { get; } = new("--out", "-o") { Description = "The new file; one that is there is never written over.", HelpName = "file", Required = true };

    public void AddTo(Verb verb)
    {
        verb.Add(File);
        foreach (var option in new Option[] { Platform, _from, _to, _size, _pad, _dropClock, _fromAddress, _fromData, _toAddress, _toData, Target })
        {
            verb.Add(option);
        }
    }

    /// <summary>What is asked; null where a layout or lines are none.</summary>
    public SaveConversion? Request(ParseResult parsed, string platform, FindingLog log)
    {
        var from = Form(parsed, _from, log);
        var to = Form(parsed, _to, log);
        var fromWiring = Wiring(parsed, _fromAddress, _fromData, log);
        var toWiring = Wiring(parsed, _toAddress, _toData, log);
        return log.HasErrors ? null : new SaveConversion(platform, from!, to!)
        {
            Size = parsed.GetValue(_size) is { } size ? (int)PatternOptions.Bytes(size) : null,
            Pad = PadOf(parsed.GetValue(_pad) ?? "0xFF")!.Value,
            DropClock = parsed.GetValue(_dropClock),
            FromWiring = fromWiring,
            ToWiring = toWiring,
        };
    }

    private static SaveForm? Form(ParseResult parsed, Option<string> option, FindingLog log)
    {
        var word = parsed.GetRequiredValue(option);
        var form = SaveForm.Find(word);
        if (form is null)
        {
            log.Add(SaveFindings.UnknownLayout, new SourcePlace(option.Name), $"`{word}` is no layout.", SaveForm.Words);
        }

        return form;
    }

    private static SaveWiring? Wiring(ParseResult parsed, Option<string?> address, Option<string?> data, FindingLog log)
    {
        foreach (var option in new[] { address, data })
        {
            if (parsed.GetValue(option) is { } text && SaveWiring.Lines(text) is null)
            {
                log.Add(SaveFindings.Wiring, new SourcePlace(option.Name), $"`{text}` is no order of lines.", SaveWiring.Words);
            }
        }

        return parsed.GetValue(address) is null && parsed.GetValue(data) is null
            ? null
            : new SaveWiring(SaveWiring.Lines(parsed.GetValue(address) ?? ""), SaveWiring.Lines(parsed.GetValue(data) ?? ""));
    }

    private static Option<string?> Lines(string name, string what) => new(name) { Description = $"{what}: {SaveWiring.Words}.", HelpName = "lines" };

    private static SavePad? PadOf(string word) =>
        word == SavePad.RepeatWord ? new SavePad(null) : Number.TryParse(word, out long value) && value is >= 0 and <= 0xFF ? new SavePad((byte)value) : null;
}
