using System.Collections.Immutable;
using System.Text;

namespace Cartwright.Cli;

/// <summary>Completion of the command line, written for a shell.</summary>
internal static class CompletionScripts
{
    /// <summary>The shells, and what writes for each.</summary>
    public static ImmutableArray<(string Shell, Func<ImmutableArray<CompletionPlace>, string> Write)> All { get; } =
        [("bash", Bash), ("zsh", Zsh), ("fish", Fish), ("powershell", PowerShell)];

    private static string Bash(ImmutableArray<CompletionPlace> places)
    {
        var text = new StringBuilder();
        text.Append("# Completion of cartwright for bash: source <(cartwright completion bash)\n");
        text.Append("_cartwright() {\n    local here=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} verb='' word words=''\n");
        text.Append("    for word in \"${COMP_WORDS[@]:1:COMP_CWORD-1}\"; do\n        case \"$verb/$word\" in\n");
        text.AppendJoin("", Steps(places).Select(static step => $"            '{step.From}/{step.Word}') verb='{step.To}' ;;\n"));
        text.Append("        esac\n    done\n    case \"$verb $before\" in\n");
        text.AppendJoin("", Values(places).Select(static value => $"        '{value.Path} {value.Option.Name}') words='{string.Join(' ', value.Option.Words)}' ;;\n"));
        text.Append("        *)\n            case \"$verb\" in\n");
        text.AppendJoin("", places.Select(static place => $"                '{place.Path}') words='{string.Join(' ', place.Everything)}' ;;\n"));
        text.Append("            esac ;;\n    esac\n    mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$here\")\n}\ncomplete -o bashdefault -o default -F _cartwright cartwright\n");
        return text.ToString();
    }

    private static string Zsh(ImmutableArray<CompletionPlace> places)
    {
        var text = new StringBuilder();
        text.Append("#compdef cartwright\n# Completion of cartwright for zsh: cartwright completion zsh > \"${fpath[1]}/_cartwright\"\n");
        text.Append("_cartwright() {\n    local before=${words[CURRENT-1]} verb='' word\n    local -a found\n");
        text.Append("    for word in \"${(@)words[2,CURRENT-1]}\"; do\n        case \"$verb/$word\" in\n");
        text.AppendJoin("", Steps(places).Select(static step => $"            '{step.From}/{step.Word}') verb='{step.To}' ;;\n"));
        text.Append("        esac\n    done\n    case \"$verb $before\" in\n");
        text.AppendJoin("", Values(places).Select(static value => $"        '{value.Path} {value.Option.Name}') found=({string.Join(' ', value.Option.Words.Select(Quoted))}) ;;\n"));
        text.Append("        *)\n            case \"$verb\" in\n");
        text.AppendJoin("", places.Select(static place => $"                '{place.Path}') found=({string.Join(' ', Described(place).Select(static row => Quoted(row.Text.Length == 0 ? row.Name : $"{row.Name}:{row.Text}")))}) ;;\n"));
        text.Append("            esac ;;\n    esac\n    _describe cartwright found || _files\n}\nif [ \"$funcstack[1]\" = _cartwright ]; then\n    _cartwright \"$@\"\nelse\n    compdef _cartwright cartwright\nfi\n");
        return text.ToString();
    }

    private static string Fish(ImmutableArray<CompletionPlace> places)
    {
        var text = new StringBuilder();
        text.Append("# Completion of cartwright for fish: cartwright completion fish > ~/.config/fish/completions/cartwright.fish\n");
        text.Append("function __cartwright_at\n    set -l verb ''\n    for word in (commandline -opc)[2..]\n        switch \"$verb/$word\"\n");
        text.AppendJoin("", Steps(places).Select(static step => $"            case '{step.From}/{step.Word}'\n                set verb '{step.To}'\n"));
        text.Append("        end\n    end\n    test \"$verb\" = \"$argv[1]\"\nend\n");
        foreach (var place in places)
        {
            var start = $"complete -c cartwright -n '__cartwright_at \"{place.Path}\"'";
            text.AppendJoin("", place.Verbs.Select(verb => $"{start} -f -a {verb.Name} -d {FishQuoted(verb.Text)}\n"));
            text.AppendJoin("", place.Options.Select(option => $"{start} -l {option.Name[2..]}{Value(option)} -d {FishQuoted(option.Text)}\n"));
            text.Append(place.Words.IsEmpty ? "" : $"{start} -f -a '{string.Join(' ', place.Words)}'\n");
        }

        return text.ToString();

        static string Value(CompletionOption option) => !option.TakesValue ? "" : option.Words.IsEmpty ? " -r" : $" -x -a '{string.Join(' ', option.Words)}'";
    }

    private static string PowerShell(ImmutableArray<CompletionPlace> places)
    {
        var text = new StringBuilder();
        text.Append("# Completion of cartwright for PowerShell: cartwright completion powershell | Out-String | Invoke-Expression\n");
        text.Append("Register-ArgumentCompleter -Native -CommandName cartwright -ScriptBlock {\n    param($here, $line, $position)\n    $steps = @{\n");
        text.AppendJoin("", Steps(places).Select(static step => $"        '{step.From}/{step.Word}' = '{step.To}'\n"));
        text.Append("    }\n    $values = @{\n");
        text.AppendJoin("", Values(places).Select(static value => $"        '{value.Path} {value.Option.Name}' = '{string.Join(' ', value.Option.Words)}'\n"));
        text.Append("    }\n    $places = @{\n");
        text.AppendJoin("", places.Select(static place => $"        '{place.Path}' = '{string.Join(' ', place.Everything)}'\n"));
        text.Append("""
                }
                $before = @($line.CommandElements | Where-Object { $_.Extent.EndOffset -lt $position } | Select-Object -Skip 1 | ForEach-Object { $_.ToString() })
                $verb = ''
                foreach ($word in $before) { if ($steps.ContainsKey("$verb/$word")) { $verb = $steps["$verb/$word"] } }
                $last = if ($before.Count) { $before[-1] } else { '' }
                $words = if ($values.ContainsKey("$verb $last")) { $values["$verb $last"] } else { $places[$verb] }
                $words -split ' ' | Where-Object { $_ -like "$here*" -and $_ } | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
            }

            """);
        return text.ToString();
    }

    private static IEnumerable<(string From, string Word, string To)> Steps(ImmutableArray<CompletionPlace> places) =>
        places.SelectMany(static place => place.Verbs.Select(verb => (place.Path, verb.Name, $"{place.Path} {verb.Name}".TrimStart())));

    private static IEnumerable<(string Path, CompletionOption Option)> Values(ImmutableArray<CompletionPlace> places) =>
        places.SelectMany(static place => place.Options.Where(static option => option.TakesValue).Select(option => (place.Path, option)));

    private static IEnumerable<(string Name, string Text)> Described(CompletionPlace place) =>
        [.. place.Verbs, .. place.Options.Select(static option => (option.Name, option.Text)), .. place.Words.Select(static word => (word, ""))];

    private static string Quoted(string words) => $"'{words.Replace("'", "'\\''", StringComparison.Ordinal)}'";

    private static string FishQuoted(string words) => $"'{words.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}'";
}
