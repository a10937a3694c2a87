namespace ShopPlanner.Cutting.Boards;

/// <summary>Closes the gap that dives leave.</summary>
internal sealed class Closing(Search search, Relaxation relaxation)
{
    public void Run()
    {
        if (relaxation.BestPoint is not { } duals) return;
        var most = 50_000;
        while (!search.Done)
        {
            var target = search.Best.Total - 1;
            List<Pattern>? patterns;
            while ((patterns = PatternList.Of(search.Model, duals, target, most)) is null && target > search.Bound)
                target = search.Bound + ((target - search.Bound) / 2);
            Console.WriteLine($"  {search.Elapsed.TotalSeconds:0.00} bound {search.Bound} best {search.Best.Total} target {target} patterns {patterns?.Count}");
            if (patterns is null) return;
            var solver = Environment.GetEnvironmentVariable("MIP") ?? "SCIP";
            using var choice = new PatternChoice(search.Model, patterns, solver);
            var result = choice.Solve(search.Left, search.Cancel);
            Console.WriteLine($"  {search.Elapsed.TotalSeconds:0.00} settled {result.Settled} plan {result.Plan?.Total}");
            if (result.Plan is { } plan) search.Offer(plan);
            if (!result.Settled) return;
            search.Raise(Math.Min(target + 1, result.Plan?.Total ?? long.MaxValue));
        }
    }
}
