using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Platforms;

namespace Cartwright.Cli;

/// <summary><c>cartwright new</c></summary>
internal static class NewVerb
{
    private const string UsualFolder = "my-game";

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var platform = new Argument<string?>("platform") { Description = "The platform, or a family of them for its usual one; without it, all are listed.", Arity = ArgumentArity.ZeroOrOne };
        var folder = new Argument<string?>("folder") { Description = $"The cart folder, new or empty; without it, {UsualFolder}.", Arity = ArgumentArity.ZeroOrOne };
        var name = new Option<string?>("--name") { Description = "The cart's name, which its files get; without it, that of the folder.", HelpName = "name" };
        var title = new Option<string>("--title") { Description = "The game's title.", HelpName = "words", DefaultValueFactory = static _ => "THE NEW GAME" };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "new",
            "Makes a cart folder to start from: a program that builds, its source, a manifest, a Makefile and a project file.",
            "cartwright new",
            "cartwright new gb my-game",
            "cartwright new snes harbour --title \"HARBOUR LIGHTS\"")
        {
            platform, folder, name, title, json,
        };
        verb.SetAction(parsed =>
        {
            var pack = TemplatePack.Open();
            var families = TemplateFamily.All(pack);
            var target = Path.GetFullPath(parsed.GetValue(folder) ?? UsualFolder);
            return parsed.GetValue(platform) is { } words
                ? Find(words, families, errors) is { } found && IsName(parsed.GetValue(name) ?? CartFolder.NameOf(target), errors) is { } cart
                    ? Make(new NewCart(cart, parsed.GetRequiredValue(title)).Files(pack, found.Family, found.Platform), target, parsed.GetValue(json), output, errors)
                    : ExitCode.Refused
                : List(families, parsed.GetValue(json), output);
        });
        return verb;
    }

    private static (TemplateFamily Family, string Platform)? Find(string words, ImmutableArray<TemplateFamily> families, TextWriter errors)
    {
        var id = PlatformCatalog.BuiltIn.Find(words)?.Facts.Id
            ?? families.FirstOrDefault(family => string.Equals(family.Name, words, StringComparison.OrdinalIgnoreCase))?.Platforms[0];
        if (id is null)
        {
            errors.WriteLine(NotFound.Line("platform", words, PlatformCatalog.BuiltIn.Question(words), "new"));
            return null;
        }

        return (families.First(family => family.Platforms.Contains(id)), id);
    }

    private static string? IsName(string name, TextWriter errors)
    {
        if (FileNameRule.Problem(name) is not { } problem)
        {
            return name;
        }

        errors.WriteLine($"cartwright: a cart cannot be called `{name}`: {problem}. Letters, digits, `-` and `_` are.");
        return null;
    }

    private static int List(ImmutableArray<TemplateFamily> families, bool json, TextWriter output)
    {
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteStartArray("families");
                foreach (var family in families)
                {
                    writer.WriteStartObject();
                    writer.WriteString("family", family.Name);
                    Json.WriteTexts(writer, "platforms", family.Platforms);
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
            });
        }
        else
        {
            Columns.Write(output, "", [.. families.Select(static family => new[] { family.Name, string.Join(", ", family.Platforms) })]);
        }

        return ExitCode.Done;
    }

    private static int Make(ImmutableArray<TemplateFile> files, string folder, bool json, TextWriter output, TextWriter errors)
    {
        var log = new FindingLog();
        if (CartFolder.IsFree(folder, "Choose another folder.", log))
        {
            NewCart.Write(files, folder, log);
        }

        var findings = log.ToSorted();
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteString("folder", folder);
                Json.WriteTexts(writer, "files", log.HasErrors ? [] : files.Select(static file => file.Path));
                Json.WriteFindings(writer, findings);
            });
        }
        else
        {
            ImageInput.WriteFindings(errors, findings);
        }

        if (!json && !log.HasErrors)
        {
            output.WriteLine($"{files.Length} files written into {folder}");
            output.WriteLine($"`cartwright build {Path.GetRelativePath(Environment.CurrentDirectory, folder)}` builds the cart");
        }

        return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
    }
}
