namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Puts known patterns together anew: an integer program over those whose worth falls least short of their stock's cost. Finds
/// plans that no single dive does; proves nothing.
/// </summary>
internal sealed class RestrictedMasterHeuristic(Search search, Relaxation relaxation)
{
    private const int Most = 1_500;

    /// <summary>One attempt, ended after a number of steps.</summary>
    public void Run()
    {
        var own = search.Best.Cuts.Select(cut => cut.Pattern);
        var close = relaxation.Columns.OrderBy(Shortfall).Take(Most);
        using var choice = new PatternProgram(search.Model, [.. own.Concat(close).Distinct()]);
        if (choice.Solve(search, briefly: true).Plan is { } plan)
            search.Offer(plan);
    }

    private Int128 Shortfall(Pattern pattern)
    {
        var duals = relaxation.BestPoint;
        var worth = pattern.Pieces.Aggregate((Int128)0, (sum, piece) => sum + ((Int128)duals.Values[piece.Item] * piece.Count));
        return (search.Model.Kinds[pattern.Kind].Cost * (Int128)duals.Scale) + duals.Surcharges[pattern.Kind] - worth;
    }
}
