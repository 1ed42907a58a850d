using System.Diagnostics;
using System.Globalization;
using Cartwright.FaultExperiments;
using Cartwright.FaultSimulator;

var seed = ulong.Parse(Option("--seed", "1000"), CultureInfo.InvariantCulture);
var cases = int.Parse(Option("--cases", "100"), CultureInfo.InvariantCulture);
var only = Option("--only", "");
var shows = args.Contains("--show");
Console.WriteLine(Row("case", "cases", "right", "share", "bar", "candidate", "open", "incomplete", "lucky", "wrong", "slowest ms"));
var chosen = Experiments.All.Where(row => row.Name.Contains(only, StringComparison.Ordinal)).ToList();
var wrong = chosen.Sum(Run);
Console.WriteLine($"{wrong} wrong answers in {chosen.Count * cases}");
return wrong == 0 ? 0 : 1;

int Run(Experiment experiment)
{
    var counts = new int[Enum.GetValues<Grade>().Length];
    var slowest = 0L;
    for (var i = 0; i < cases; i++)
    {
        var trial = experiment.Draw(new SmallRandom(seed + (ulong)i));
        var reads = trial.Reads;
        var clock = Stopwatch.StartNew();
        var answer = Finder.Ask(trial, reads);
        slowest = Math.Max(slowest, clock.ElapsedMilliseconds);
        var grade = Judge.Of(trial, reads, answer);
        counts[(int)grade]++;
        if (shows && grade != Grade.Right)
            Show(experiment, seed + (ulong)i, trial, answer, grade);
    }

    var share = (double)counts[(int)Grade.Right] / cases;
    Console.WriteLine(Row(
        experiment.Name, cases, counts[(int)Grade.Right], (share * 100).ToString("0.0", CultureInfo.InvariantCulture) + (share < experiment.Bar ? " !" : ""),
        experiment.Bar * 100, counts[(int)Grade.OpenWithCandidate], counts[(int)Grade.Open], counts[(int)Grade.Incomplete], counts[(int)Grade.Lucky],
        counts[(int)Grade.Wrong], slowest));
    return counts[(int)Grade.Wrong];
}

static void Show(Experiment experiment, ulong seed, Trial trial, Answer answer, Grade grade)
{
    Console.WriteLine($"  {experiment.Name} seed {seed}: {grade}; {trial.Image.Length} bytes, {trial.Bench.Shape.Width} bit, drawn {FaultText.Of(trial.Faults)}");
    Console.WriteLine($"    named {(answer.Equal ? "equal" : FaultText.Of(answer.Faults))}; candidates {string.Join(" | ", answer.Candidates.Select(FaultText.Of))}; next {answer.Next}");
}

static string Row(params ReadOnlySpan<object> cells)
{
    var line = "";
    for (var i = 0; i < cells.Length; i++)
    {
        var text = string.Format(CultureInfo.InvariantCulture, "{0}", cells[i]);
        line += i == 0 ? text.PadRight(26) : text.PadLeft(11);
    }

    return line;
}

string Option(string name, string otherwise)
{
    var at = Array.IndexOf(args, name);
    return at >= 0 && at + 1 < args.Length ? args[at + 1] : otherwise;
}
