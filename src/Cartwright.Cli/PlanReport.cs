using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Plans;

namespace Cartwright.Cli;

/// <summary>Tells what a plan comes to.</summary>
internal static class PlanReport
{
    // What becomes of a chip, in the order in which it is told.
    private static readonly WriteAction[] Actions = [WriteAction.Keep, WriteAction.Program, WriteAction.Rewrite, WriteAction.Erase];

    public static void WriteText(TextWriter output, WritePlan plan, string name, string? list)
    {
        output.WriteLine($"{name}, {ByteSize.Words(plan.WholeChip.Length)}, {PlanWords.Methods.Print(plan.Target.Method)}");
        if (plan.IsNothing)
        {
            output.WriteLine("The chip holds the new contents already: there is nothing to write.");
        }
        else if (!plan.IsPossible)
        {
            output.WriteLine("The chip cannot be made to hold the new contents.");
        }
        else
        {
            Columns.Write(output, "  ", [.. Actions.Where(action => plan.Count(action) > 0).Select(action => Row(plan, action))]);
            WriteTimes(output, plan);
            output.WriteLine("Sectors and pages");
            Columns.Write(output, "  ", [.. Runs(plan).Select(run => Row(plan, run))]);
        }

        if (list is not null)
        {
            output.WriteLine($"List written to {list}");
        }
    }

    private static string[] Row(WritePlan plan, WriteAction action)
    {
        var programmed = plan.Steps.Where(step => step.Action == action).Sum(static step => (long)step.Programmed);
        return [PlanWords.Actions.Print(action), Blocks(plan, plan.Count(action)), action == WriteAction.Keep ? "" : Units(plan, programmed) + " to write"];
    }

    private static void WriteTimes(TextWriter output, WritePlan plan)
    {
        var figures = plan.EraseTime is null && plan.ProgramTime is null ? "no figures are at hand"
            : plan.Target.Part.Evidence.Status == PartStatus.FromMemory ? "figures from memory"
            : plan.Figures.AreMaxima ? "longest figures, not typical ones"
            : "typical figures";
        output.WriteLine($"Time    {Seconds(plan.Time)}: erasing {Seconds(plan.EraseTime)}, programming {Seconds(plan.ProgramTime)}; {figures}");
        output.WriteLine("        Not counted: what the writer takes for commands, transfer and verifying. An estimate, no time limit.");
        if (plan.Target.Method == WriteMethod.Ultraviolet && plan.Count(WriteAction.Erase) > 0)
        {
            output.WriteLine("        Not counted either: the ultraviolet lamp, whose time stands in the data sheets of chip and eraser; commonly 15 to 20 minutes.");
            output.WriteLine($"Caution {PartFindings.UltravioletErase.Why}");
            output.WriteLine($"        {PartFindings.UltravioletErase.Remedy}");
        }

        if (plan.WholeChipTime is { } whole && plan.Time is { } time && whole < time)
        {
            output.WriteLine($"        Erasing the whole chip and writing everything anew would take {Seconds(whole)}.");
        }

        if (Wear(plan) is { } wear)
        {
            output.WriteLine("Wear    " + wear);
        }
    }

    private static string? Wear(WritePlan plan)
    {
        var worn = plan.Count(WriteAction.Erase) + plan.Count(WriteAction.Rewrite);
        var cycles = plan.Target.Part.Endurance.Text;
        return worn == 0 || plan.Target.Part.Endurance.IsUnlimited ? null
            : $"one cycle of each of {Blocks(plan, worn)}{(cycles.Length == 0 ? "; how many it stands is not known" : $"; rated for {cycles}")}";
    }

    private static string[] Row(WritePlan plan, (WriteAction Action, int Start, int End, int Count, int Programmed) run) =>
        [$"{Number.Hex(run.Start, 6)}-{Number.Hex(run.End - 1, 6)}", PlanWords.Actions.Print(run.Action), Blocks(plan, run.Count), Units(plan, run.Programmed)];

    // Neighbours with one action are one line.
    private static IEnumerable<(WriteAction Action, int Start, int End, int Count, int Programmed)> Runs(WritePlan plan)
    {
        var run = default((WriteAction Action, int Start, int End, int Count, int Programmed));
        foreach (var step in plan.Steps)
        {
            if (step.Action != run.Action)
            {
                if (run.Action != WriteAction.Keep)
                {
                    yield return run;
                }

                run = (step.Action, step.Start, step.Start, 0, 0);
            }

            run = (run.Action, run.Start, step.End, run.Count + 1, run.Programmed + step.Programmed);
        }

        if (run.Action != WriteAction.Keep)
        {
            yield return run;
        }
    }

    private static string Blocks(WritePlan plan, int count)
    {
        var one = plan.Target.Method switch
        {
            WriteMethod.Sectors => "sector",
            _ when plan.Steps.Length == 1 => "chip",
            _ => "page",
        };
        return string.Create(CultureInfo.InvariantCulture, $"{count} {one}{(count == 1 ? "" : "s")}");
    }

    private static string Units(WritePlan plan, long count) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(plan.Target.UnitBytes == 2 ? "word" : "byte")}{(count == 1 ? "" : "s")}");

    /// <summary>A plan in one line: <c>2 of 128 sectors change: 1 to erase, 1 to program only; about 0.02 s</c>.</summary>
    internal static string Summary(WritePlan? plan)
    {
        if (plan is null || plan.IsNothing)
        {
            return "unchanged";
        }

        if (!plan.IsPossible)
        {
            return "changed, and the chip cannot be erased: a new chip is needed";
        }

        var (erase, program) = (plan.Count(WriteAction.Erase), plan.Count(WriteAction.Program));
        var changed = plan.Steps.Length - plan.Count(WriteAction.Keep);
        var what = plan.Steps.Length > 1
            ? string.Create(CultureInfo.InvariantCulture, $"{changed} of {Blocks(plan, plan.Steps.Length)} {(changed == 1 ? "changes" : "change")}")
            : "the chip changes";
        var how = plan.Steps.Length == 1 ? $", and is {(erase > 0 ? PlanWords.Methods.Print(plan.Target.Method) : "programmed on top of what is there")}"
            : erase + program > 0 ? string.Create(CultureInfo.InvariantCulture, $": {erase} to erase, {program} to program only")
            : "";
        return $"{what}{how}; {(plan.Time is null ? "time not known" : Seconds(plan.Time))}";
    }

    /// <summary>A time in words: <c>about 0.58 s</c>, <c>not known</c>.</summary>
    internal static string Seconds(TimeSpan? time) => time switch
    {
        null => "not known",
        { TotalSeconds: 0 } => "0 s",
        { TotalSeconds: < 0.01 } => "less than 0.01 s",
        { TotalSeconds: < 10 } => string.Create(CultureInfo.InvariantCulture, $"about {time.Value.TotalSeconds:0.00} s"),
        _ => string.Create(CultureInfo.InvariantCulture, $"about {time.Value.TotalSeconds:0} s"),
    };

    public static void WriteJson(TextWriter output, WritePlan? plan, string name, string? list, ImmutableArray<Finding> findings) => Json.Write(output, json =>
    {
        json.WriteBoolean("planned", plan is not null);
        if (plan is not null)
        {
            json.WriteString("part", name);
            json.WriteNumber("capacity", plan.WholeChip.Length);
            json.WriteString("method", PlanWords.Methods.Word(plan.Target.Method));
            json.WriteNumber("unitBytes", plan.Target.UnitBytes);
            WriteCounts(json, plan);
            json.WriteString("endurance", plan.Target.Part.Endurance.Text);
            json.WriteString("list", list);
            WriteSteps(json, plan);
        }

        Json.WriteFindings(json, findings);
    });

    /// <summary>Writes how much of each action there is, and the times.</summary>
    internal static void WriteCounts(Utf8JsonWriter json, WritePlan plan)
    {
        foreach (var action in Actions)
        {
            json.WriteNumber(PlanWords.Actions.Word(action), plan.Count(action));
        }

        json.WriteNumber("unitsChanged", plan.Changed);
        json.WriteNumber("unitsWritten", plan.Programmed);
        WriteTime(json, "eraseSeconds", plan.EraseTime);
        WriteTime(json, "programSeconds", plan.ProgramTime);
        WriteTime(json, "wholeChipSeconds", plan.WholeChipTime);
    }

    private static void WriteTime(Utf8JsonWriter json, string name, TimeSpan? time)
    {
        if (time is { } known)
        {
            json.WriteNumber(name, known.TotalSeconds);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void WriteSteps(Utf8JsonWriter json, WritePlan plan)
    {
        json.WriteStartArray("steps");
        foreach (var step in plan.Steps.Where(static step => step.Action != WriteAction.Keep))
        {
            json.WriteStartObject();
            json.WriteString("action", PlanWords.Actions.Word(step.Action));
            json.WriteNumber("start", step.Start);
            json.WriteNumber("length", step.Length);
            json.WriteNumber("changed", step.Changed);
            json.WriteNumber("written", step.Programmed);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
