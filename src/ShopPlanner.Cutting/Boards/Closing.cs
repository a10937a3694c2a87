namespace ShopPlanner.Cutting.Boards;

/// <summary>Closes the gap that dives leave.</summary>
internal sealed class Closing(Search search, Relaxation relaxation)
{
    private static int Env(string n, int d) => int.TryParse(Environment.GetEnvironmentVariable(n), out var v) ? v : d;

    public void Run()
    {
        relaxation.SolveWhole(true);
        if (relaxation.BestPoint is not { } duals) return;
        var graph = ArcGraph.For(search.Model, duals);
        while (!search.Done)
        {
            var target = search.Best.Total - 1;
            List<Pattern>? patterns = null;
            List<Arc>? arcs = null;
            while (true)
            {
                patterns = PatternList.Of(search.Model, duals, target, Env("PAT", 20000));
                arcs = graph?.Arcs(target, Env("ARC", 30000));
                if (patterns is not null || arcs is not null || target == search.Bound) break;
                target = search.Bound + ((target - search.Bound) / 2);
            }
            Console.WriteLine($"  {search.Elapsed.TotalSeconds:0.00} bound {search.Bound} best {search.Best.Total} target {target} patterns {patterns?.Count} arcs {arcs?.Count}");
            if (patterns is null && arcs is null) return;
            ChoiceResult result;
            if (patterns is not null && (arcs is null || patterns.Count < arcs.Count * Env("REL", 1)))
            {
                using var choice = new PatternChoice(search.Model, patterns);
                result = choice.Solve(search);
            }
            else
            {
                using var choice = new FlowChoice(search.Model, arcs!);
                result = choice.Solve(search);
            }
            Console.WriteLine($"  {search.Elapsed.TotalSeconds:0.00} settled {result.Settled} plan {result.Plan?.Total}");
            if (result.Plan is { } plan) search.Offer(plan);
            if (!result.Settled) return;
            search.Raise(Math.Min(target + 1, result.Plan?.Total ?? long.MaxValue));
        }
    }
}
