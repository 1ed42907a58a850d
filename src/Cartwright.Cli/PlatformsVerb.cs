using System.CommandLine;
using Cartwright.Documents;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary><c>cartwright platforms</c></summary>
internal static class PlatformsVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var name = new Argument<string?>("name") { Description = "A platform to show in full, or a word to search for.", Arity = ArgumentArity.ZeroOrOne };
        var json = Verb.JsonOption();
        var verb = new Verb("platforms", "Lists the platforms, or shows one: sizes, header fields, checksums, traps.", "cartwright platforms", "cartwright platforms snes") { name, json };
        verb.SetAction(parsed => Run(parsed.GetValue(name), parsed.GetValue(json), output, errors));
        return verb;
    }

    private static int Run(string? name, bool json, TextWriter output, TextWriter errors)
    {
        var catalog = PlatformCatalog.BuiltIn;
        if (name is not null && catalog.Find(name) is { } platform)
        {
            if (json)
            {
                Json.Write(output, writer => writer.WriteString("page", PlatformPage.Markdown(platform)));
            }
            else
            {
                output.Write(PlatformPage.Markdown(platform));
            }

            return ExitCode.Done;
        }

        var found = catalog.All.Where(known => name is null || Matches(known, name)).ToList();
        if (found.Count == 0)
        {
            errors.WriteLine(NotFound.Line("platform", name!, catalog.Question(name!), "platforms"));
            return ExitCode.Refused;
        }

        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteStartArray("platforms");
                foreach (var known in found)
                {
                    writer.WriteStartObject();
                    writer.WriteString("id", known.Facts.Id);
                    writer.WriteString("name", known.Facts.Name);
                    Json.WriteTexts(writer, "aliases", known.Facts.Aliases);
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
            });
        }
        else
        {
            Columns.Write(output, "", [.. found.Select(static known => new[] { known.Facts.Id, known.Facts.Name, string.Join(", ", known.Facts.Aliases) })]);
        }

        return ExitCode.Done;
    }

    private static bool Matches(Platform platform, string word) =>
        platform.Facts.Name.Contains(word, StringComparison.OrdinalIgnoreCase)
        || platform.Facts.Id.Contains(word, StringComparison.OrdinalIgnoreCase)
        || platform.Facts.Aliases.Any(alias => alias.Contains(word, StringComparison.OrdinalIgnoreCase));
}
