using System.Diagnostics;
using System.Globalization;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>demo [--seconds S] [--json FILE] [--workers N]</c>: plans three invented jobs and prints a row for each. A run is faulty,
/// exit code 1, when the verifier finds anything in a plan.
/// </summary>
public static class DemoCommand
{
    private const double UsualSeconds = 10;

    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.ParseWithoutPath(words, ["seconds", "json", "workers"], []);
        using var lines = new JsonLines(options.Text("json"));
        var faulty = false;
        Console.WriteLine(DemoRow.Heading);
        foreach (var (name, request) in DemoJobs.All())
            faulty |= !Measure(name, request, options, lines);
        return faulty ? 1 : 0;
    }

    private static bool Measure(string name, CutRequest request, Options options, JsonLines lines)
    {
        var clock = Stopwatch.StartNew();
        TimeSpan? first = null;
        var plan = CutPlanner.Plan(request, new SearchControl
        {
            Time = TimeSpan.FromSeconds(options.Number("seconds", UsualSeconds)),
            Workers = options.Whole("workers", Environment.ProcessorCount),
            Progress = progress => first ??= progress.Cost is null ? null : clock.Elapsed,
        });
        var row = DemoRow.Of(name, request, plan, first ?? clock.Elapsed, clock.Elapsed);
        Console.WriteLine(row.Text());
        lines.Write(row);
        var faults = PlanVerifier.Check(request, plan);
        foreach (var fault in faults) Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {fault}"));
        return faults.IsEmpty;
    }
}
