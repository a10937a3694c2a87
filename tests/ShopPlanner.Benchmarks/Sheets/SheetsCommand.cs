using System.Diagnostics;
using System.Globalization;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>sheets PATH [--seconds S] [--json FILE] [--layouts] [--kerf K] [--take N] [--workers N] [--seed N] [--rounds N]
/// [--verbose]</c>: solves the instances of PATH, turning allowed and not, and prints a table for each with a row for each set.
/// A run is faulty, exit code 1, when a layout breaks a rule or a bound contradicts a value.
/// </summary>
public static class SheetsCommand
{
    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.Parse(
            words,
            ["seconds", "json", "kerf", "take", "workers", "seed", "rounds"],
            ["layouts", "verbose"]
        );
        using var lines = new JsonLines(options.Text("json"));
        var tables = new Dictionary<Turning, SetTable> { [Turning.Free] = new(), [Turning.Fixed] = new() };
        var faulty = false;
        var records = InstanceFiles.Sample(InstanceFiles.Read(options.Path), options.Whole("take", 0));
        foreach (var instance in records.SelectMany(r => SheetInstance.ReadAll(r, options.Whole("kerf", 0))))
            faulty |= !Measure(instance, options, tables[instance.Turning], lines);
        foreach (var table in tables.Values)
            table.Print(Console.Out);
        return faulty ? 1 : 0;
    }

    private static bool Measure(SheetInstance instance, Options options, SetTable table, JsonLines lines)
    {
        var clock = Stopwatch.StartNew();
        var solution = SheetSolver.Solve(instance.Problem, Control(options));
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
        lines.Write(SheetLine.From(instance, outcome, solution, options.Has("layouts")));
        if (options.Has("verbose"))
            Tell(outcome);
        return Faultless(instance, solution) && !SetTable.IsWrong(outcome);
    }

    private static SearchControl Control(Options options) =>
        new()
        {
            Time = TimeSpan.FromSeconds(options.Number("seconds", 10)),
            Iterations = options.Text("rounds") is null ? null : options.Whole("rounds", 0),
            Seed = options.Whole("seed", 1),
            Workers = options.Whole("workers", Environment.ProcessorCount),
        };

    private static bool Faultless(SheetInstance instance, SheetSolution solution)
    {
        var faults = SheetCheck.Faults(instance.Problem, solution);
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
