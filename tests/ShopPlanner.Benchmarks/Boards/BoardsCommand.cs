using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>boards PATH [--seconds S] [--json FILE] [--layouts] [--kerf K] [--take N] [--verbose]</c>: solves the instances of PATH and
/// prints a row for each set. A run is faulty, exit code 1, when a layout breaks a rule or a bound contradicts a value.
/// </summary>
public static class BoardsCommand
{
    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.Parse(words, ["seconds", "json", "kerf", "take", "workers"], ["layouts", "verbose"]);
        using var lines = new JsonLines(options.Text("json"));
        var table = new SetTable();
        var faulty = false;
        foreach (var instance in InstanceFiles.Sample(InstanceFiles.Read(options.Path), options.Whole("take", 0)))
            faulty |= !Measure(instance, options, table, lines);
        table.Print(Console.Out);
        return faulty ? 1 : 0;
    }

    private static bool Measure(JsonElement json, Options options, SetTable table, JsonLines lines)
    {
        var instance = BoardInstance.Read(json, options.Whole("kerf", 0));
        var clock = Stopwatch.StartNew();
        var solution = BoardSolver.Solve(instance.Problem, Control(options));
        var outcome = new Outcome(
            instance.Set,
            instance.Name,
            solution.Cost,
            instance.Best,
            solution.Bound,
            solution.Proven,
            clock.Elapsed.TotalSeconds
        );
        table.Add(outcome);
        lines.Write(BoardLine.From(instance, outcome, solution, options.Has("layouts")));
        if (options.Has("verbose"))
            Tell(outcome);
        return Faultless(instance, solution) && !SetTable.IsWrong(outcome);
    }

    private static SearchControl Control(Options options) =>
        new()
        {
            Time = TimeSpan.FromSeconds(options.Number("seconds", 60)),
            Workers = options.Whole("workers", Environment.ProcessorCount),
        };

    private static bool Faultless(BoardInstance instance, BoardSolution solution)
    {
        var faults = BoardCheck.Faults(instance.Problem, solution);
        if (!solution.Complete)
            Console.WriteLine($"{instance.Set}/{instance.Name}: not everything is placed");
        foreach (var fault in faults)
            Console.Error.WriteLine($"{instance.Set}/{instance.Name}: {fault}");
        return faults.Count == 0;
    }

    private static void Tell(Outcome o) =>
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{o.Set}/{o.Name}: {o.Value} bound {o.Bound} published {o.Best} {(o.Proven ? "proven" : "OPEN")} {o.Seconds:0.000} s"
            )
        );
}
