using System.Diagnostics;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Benchmarks;

/// <summary>The planner, shelves filled by hand and rectangle packers, one after the other on the same instance.</summary>
/// <param name="options">The command's.</param>
/// <param name="packers">Null where none are installed.</param>
public sealed class SheetMethods(Options options, OutsidePackers? packers)
{
    private readonly double seconds = options.Number("seconds", 10);
    private readonly int workers = options.Whole("workers", Environment.ProcessorCount);

    /// <summary>A table's title.</summary>
    public string Title(string turning) =>
        $"Sheets used, each method with {options.Text("seconds") ?? "10"} s. {turning}"
        + (
            packers is null
                ? ""
                : " The rectangle packers ignore kerf and edge-to-edge cuts: what they pack may not be cut at a saw, so that fewer"
                    + " sheets are no contradiction; \"cuttable\" counts where edge-to-edge cuts could free every piece. Each packer"
                    + " tries as many of its own settings as it can begin within the time, and its best counts."
        );

    public Answers Answer(SheetInstance instance)
    {
        List<(MethodOutcome Outcome, IEnumerable<string> Faults)> cut = [Planner(instance), ByHand(instance)];
        var packed = packers is null ? [] : Packers(instance, packers).ToList();
        return new(
            [.. cut.Concat(packed).Select(answer => answer.Outcome)],
            [
                .. cut.Concat(packed).SelectMany(answer => answer.Faults),
                .. Agreement.Contradictions(cut.ConvertAll(answer => answer.Outcome)),
            ]
        );
    }

    private (MethodOutcome Outcome, IEnumerable<string> Faults) Planner(SheetInstance instance)
    {
        var clock = Stopwatch.StartNew();
        var solution = SheetSolver.Solve(
            instance.Problem,
            new() { Time = TimeSpan.FromSeconds(this.seconds), Workers = workers }
        );
        var seconds = clock.Elapsed.TotalSeconds;
        var value = solution.Complete ? solution.Cost : (double?)null;
        var proven = solution is { Complete: true, Proven: true };
        var cuttable = Packing.Of(solution).Cuttable;
        return (
            new(instance.Set, instance.Name, "planner", value, instance.Best, proven, seconds, cuttable),
            SheetCheck.Faults(instance.Problem, solution).Select(fault => $"{instance.Set}/{instance.Name}: planner: {fault}")
        );
    }

    private static (MethodOutcome Outcome, IEnumerable<string> Faults) ByHand(SheetInstance instance)
    {
        var clock = Stopwatch.StartNew();
        var packing = Shelves.Pack(instance.Problem);
        return Outcome(instance, "shelves by hand", packing, clock.Elapsed.TotalSeconds, instance.Problem);
    }

    private IEnumerable<(MethodOutcome Outcome, IEnumerable<string> Faults)> Packers(
        SheetInstance instance,
        OutsidePackers packers
    )
    {
        var noKerf = WithoutKerf(instance);
        return from answer in packers.Pack(noKerf, seconds)
            select Outcome(instance, answer.Name, answer.Packing, answer.Seconds, noKerf);
    }

    private static (MethodOutcome Outcome, IEnumerable<string> Faults) Outcome(
        SheetInstance instance,
        string method,
        Packing packing,
        double seconds,
        SheetProblem problem
    ) =>
        (
            new(instance.Set, instance.Name, method, packing.Sheets.Count, instance.Best, false, seconds, packing.Cuttable),
            packing.Faults(problem).Select(fault => $"{instance.Set}/{instance.Name}: {method}: {fault}")
        );

    private static SheetProblem WithoutKerf(SheetInstance instance) =>
        new(
            [
                .. instance.Problem.Stocks.Select(stock =>
                    stock with
                    {
                        Dx = stock.Dx - instance.Kerf,
                        Dy = stock.Dy - instance.Kerf,
                    }
                ),
            ],
            [.. instance.Problem.Items.Select(item => item with { Dx = item.Dx - instance.Kerf, Dy = item.Dy - instance.Kerf })]
        );
}
