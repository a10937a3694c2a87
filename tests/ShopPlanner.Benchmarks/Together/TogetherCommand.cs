using System.Diagnostics;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Together;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// <c>together [--seconds S] [--runs N]</c>: plans ten invented projects together, with the choice of stores and each project
/// alone, and prints a row for each run. A run is faulty, exit code 1, when the verifier finds anything or the projects cost
/// more together than one after another.
/// </summary>
public static class TogetherCommand
{
    private const double BasketShare = 0.25;

    public static int Run(IReadOnlyList<string> words)
    {
        var options = Options.ParseWithoutPath(words, ["seconds", "runs"], []);
        var (seconds, runs) = (options.Number("seconds", 9), options.Whole("runs", 3));
        Console.WriteLine("| seed | pieces | offcuts | stores | together | alone | saved % | bound | total s |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        var faulty = false;
        for (var seed = 1; seed <= runs; seed++)
            faulty |= !Measure(seed, seconds);
        return faulty ? 1 : 0;
    }

    private static bool Measure(int seed, double seconds)
    {
        var (job, watch) = (TogetherJobs.Of(seed), Stopwatch.StartNew());
        var baskets = StoreBaskets.Of(
            job.Request,
            job.Stores,
            false,
            TimeSpan.FromSeconds(seconds * BasketShare),
            (request, time) => CutPlanner.Plan(request, new SearchControl { Time = time })
        );
        var bought = StoreBaskets.From(job.Request, job.Stores, baskets[0]);
        var left = TimeSpan.FromSeconds(seconds) - watch.Elapsed;
        var joint = JointPlanner.Plan(bought, job.Groups, [], new SearchControl { Time = left }, CutPlanner.Plan);
        watch.Stop();
        var alone = joint.Alone.Aggregate(Money.Zero, (sum, one) => sum + one.Plan.Cost);
        var pieces = job.Request.Parts.Sum(part => part.Quantity);
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {seed} | {pieces} | {job.Request.Stock.Count(stock => stock.Offcut)} | {string.Join(" + ", baskets[0].Stores)} | "
                    + $"{joint.Plan.Cost} | {alone} | {100 * (1 - (joint.Plan.Cost.Amount / alone.Amount)):0.0} | "
                    + $"{joint.Plan.CostLowerBound} | {watch.Elapsed.TotalSeconds:0.00} |"
            )
        );
        return PlanVerifier.Check(bought, joint.Plan).IsEmpty && joint.Plan.Cost <= alone;
    }
}
