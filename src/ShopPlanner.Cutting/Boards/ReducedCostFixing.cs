namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Closes the gap that dives leave. A plan of at most some total can only use patterns, and arcs, that a dual point does not shut
/// out. Where they are few, an integer program over them either finds such a plan or proves that there is none.
/// </summary>
internal sealed class ReducedCostFixing(Search search, Relaxation relaxation)
{
    private const int MostPatterns = 20_000;
    private const int MostArcs = 20_000;
    private const int HandyPatterns = 4_000;
    private const int HandyArcs = 4_000;

    // The solver compares totals to about nine digits; where they have more, as much less is claimed.
    private const long Precision = 100_000_000;
    private const int MostPoints = 320;
    private readonly CentralDuals midst = new(relaxation, new Random(search.Seed));
    private int points = 10;

    /// <summary>Works until the gap is closed or its program cannot be settled.</summary>
    public void Run()
    {
        if (relaxation.SolveWhole(toTheEnd: true) is null)
            return;
        while (!search.Done && Narrow() is { } candidates)
        {
            var result = Solve(candidates);
            if (result.Plan is { } plan)
                search.Offer(plan);
            if (!result.Settled)
                return;
            var claim = Math.Min(candidates.Total + 1, result.Plan?.Total ?? long.MaxValue);
            search.Raise(claim - (claim / Precision));
        }
    }

    // More dual points, as long as they leave markedly less.
    private Candidates? Narrow()
    {
        var fewest = CandidatesFor(relaxation.BestPoint);
        for (; fewest is not { Handy: true } && !search.Expired; points *= 2)
        {
            if (this.midst.Of(points) is not { } midst)
                break;
            var fewer = CandidatesFor(midst);
            var better = fewer is not null && (fewest is null || fewer.Size < 0.8 * fewest.Size || fewer.Total > fewest.Total);
            if (better)
                fewest = fewer;
            if (points >= MostPoints || (!better && fewest is not null))
                break;
        }

        return fewest;
    }

    // For the highest total at which they are not too many.
    private Candidates? CandidatesFor(DualPoint duals)
    {
        var graph = ArcGraph.For(search.Model, duals);
        for (var total = search.Best.Total - 1; ; total = search.Bound + ((total - search.Bound) / 2))
        {
            var patterns = PatternList.Of(search.Model, duals, total, MostPatterns);
            var arcs = patterns?.Count <= HandyPatterns ? null : graph?.Arcs(total, MostArcs);
            if (patterns is not null || arcs is not null)
                return new(total, patterns, arcs);
            if (total <= search.Bound)
                return null;
        }
    }

    private ProgramResult Solve(Candidates candidates)
    {
        if (candidates.UsePatterns)
        {
            using var patterns = new PatternProgram(search.Model, candidates.Patterns!);
            return patterns.Solve(search);
        }

        using var flow = new ArcFlowProgram(search.Model, candidates.Arcs!);
        return flow.Solve(search);
    }

    private sealed record Candidates(long Total, List<Pattern>? Patterns, List<Arc>? Arcs)
    {
        // The program over patterns is tighter knit, so more of them are dealt with in the same time.
        public bool UsePatterns => Patterns is not null && (Arcs is null || Patterns.Count <= 2 * Arcs.Count);

        public int Size => UsePatterns ? Patterns!.Count : 2 * Arcs!.Count;

        public bool Handy => Patterns?.Count <= HandyPatterns || Arcs?.Count <= HandyArcs;
    }
}
