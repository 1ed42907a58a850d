using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright parts identify</c></summary>
internal static class PartsIdentifyVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var words = new Argument<string[]>("codes") { Description = "The codes the chip answered, in hexadecimal: those of the maker first.", Arity = ArgumentArity.OneOrMore };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "identify",
            "Finds the parts that answer with a maker's and a device code.",
            "cartwright parts identify BF B7",
            "cartwright parts identify 7F 1C 2249",
            "cartwright parts identify 01 227E 2210 2201")
        {
            words, json,
        };
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(words), parsed.GetValue(json), output, errors));
        return verb;
    }

    private static int Run(string[] words, bool json, TextWriter output, TextWriter errors)
    {
        var log = new FindingLog();
        var identity = IdentityChecks.Read(words, log);
        var parts = identity is null ? [] : PartCatalog.BuiltIn.All.Where(identity.Fits).ToImmutableArray();
        var others = identity is null ? [] : PartCatalog.BuiltIn.All.Where(identity.FitsDevice).Except(parts).ToImmutableArray();
        Tell(identity, parts, others, json, output, errors, log.ToSorted());
        return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
    }

    private static void Tell(ChipIdentity? identity, ImmutableArray<Part> parts, ImmutableArray<Part> others, bool json, TextWriter output, TextWriter errors, ImmutableArray<Finding> findings)
    {
        if (json)
        {
            Json.Write(output, writer =>
            {
                if (identity is not null)
                {
                    WriteJson(writer, identity, parts, others);
                }

                Json.WriteFindings(writer, findings);
            });
            return;
        }

        ImageInput.WriteFindings(errors, findings);
        if (identity is null)
        {
            return;
        }

        var makers = Makers(identity);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Maker   {identity.Maker:X2}: {(makers.IsEmpty ? "not known" : string.Join("; ", makers))}"));
        output.WriteLine($"Device  {IdentityChecks.DeviceText(identity)}");
        WriteParts(output, "Parts that answer so", parts);
        WriteParts(output, "Parts of other makers with this device code", others);
    }

    private static ImmutableArray<string> Makers(ChipIdentity identity) =>
        [.. MakerCodes.Of(identity.Maker, identity.Bank).Select(static code => string.Create(CultureInfo.InvariantCulture, $"{code.Name}{(code.Bank == 1 ? "" : $" (bank {code.Bank})")}"))];

    private static void WriteParts(TextWriter output, string title, ImmutableArray<Part> parts)
    {
        if (parts.IsEmpty)
        {
            return;
        }

        output.WriteLine(title);
        Columns.Write(output, "  ", [.. parts.Select(static part => new[]
        {
            part.Name, ByteSize.Words(part.CapacityBytes), PartWords.DataBuses.Print(part.DataBus), part.Supply.Text + " V",
            $"maker {part.Identity.ManufacturerId}, device {part.Identity.DeviceId}", PartWords.Statuses.Print(part.Evidence.Status),
        })]);
    }

    private static void WriteJson(Utf8JsonWriter json, ChipIdentity identity, ImmutableArray<Part> parts, ImmutableArray<Part> others)
    {
        json.WriteString("maker", identity.Maker.ToString("X2", CultureInfo.InvariantCulture));
        json.WriteNumber("bank", identity.Bank);
        json.WriteBoolean("oddParity", MakerCodes.HasOddParity(identity.Maker));
        Json.WriteTexts(json, "makers", Makers(identity));
        json.WriteString("device", IdentityChecks.DeviceText(identity));
        Json.WriteTexts(json, "parts", parts.Select(static part => part.Name));
        Json.WriteTexts(json, "otherMakers", others.Select(static part => part.Name));
    }
}
