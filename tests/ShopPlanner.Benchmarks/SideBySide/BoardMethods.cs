using System.Diagnostics;
using System.Text.Json;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>The planner, first-fit decreasing and a plain solver model, one after the other on the same instance.</summary>
public sealed class BoardMethods(Options options)
{
    private readonly double seconds = options.Number("seconds", 10);
    private readonly int workers = options.Whole("workers", Environment.ProcessorCount);

    /// <summary>Holds what <see cref="Answer"/> was told to note in it.</summary>
    public MethodTable Table { get; } =
        new(
            $"Boards: stocks used, or their cost where they differ, each method with {options.Text("seconds") ?? "10"} s. The plain"
                + " model is handed to CP-SAT with one Boolean for each piece and bin, and not built where that makes more than"
                + $" {AssignmentModel.MostBooleans:n0}."
        );

    public Answers Answer(JsonElement record)
    {
        var instance = BoardInstance.Read(record, options.Whole("kerf", 0));
        (string Method, Func<BoardSolution?> Solve)[] methods =
        [
            ("planner", () => BoardSolver.Solve(instance.Problem, Control())),
            ("first fit decreasing", () => FirstFitDecreasing.Solve(instance.Problem)),
            ("plain model, CP-SAT", () => AssignmentModel.Solve(instance.Problem, seconds, workers)),
        ];
        var answers = methods.Select(method => Time(instance, method.Method, method.Solve)).ToList();
        var outcomes = answers.ConvertAll(answer => answer.Outcome);
        return new(outcomes, [.. answers.SelectMany(answer => answer.Faults), .. Agreement.Contradictions(outcomes)]);
    }

    private SearchControl Control() => new() { Time = TimeSpan.FromSeconds(seconds), Workers = workers };

    private static (MethodOutcome Outcome, IEnumerable<string> Faults) Time(
        BoardInstance instance,
        string method,
        Func<BoardSolution?> solve
    )
    {
        var clock = Stopwatch.StartNew();
        var solution = solve();
        var seconds = clock.Elapsed.TotalSeconds;
        var value = solution is { Complete: true } ? solution.Cost : (double?)null;
        var faults = solution is null ? [] : BoardCheck.Faults(instance.Problem, solution);
        var proven = solution is { Complete: true, Proven: true };
        return (
            new(instance.Set, instance.Name, method, value, instance.Best, proven, seconds),
            faults.Select(fault => $"{instance.Set}/{instance.Name}: {method}: {fault}")
        );
    }
}
