namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Among plans of the cost found, looks for the one with the best <see cref="BoardObjectives"/>, within a short time. Never
/// trades cost or a piece for it.
/// </summary>
internal sealed class PlanPolishing(Search search, Relaxation relaxation)
{
    private const int MostPieces = 400;
    private const int FewPieces = 60;
    private const int MostPatterns = 3_000;
    private const int MostColumns = 500;

    /// <summary>The most time that it is given.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    /// <summary>Time to keep for it; zero where it does not pay: with neither bin nor leftovers in a large order.</summary>
    public static TimeSpan Reserve(CuttingModel model, TimeSpan? time)
    {
        var leftovers = model.Kinds.Any(kind => kind.Origin.FromBin || kind.Origin.KeepAtLeast is not null);
        if (model.Pieces > (leftovers ? MostPieces : FewPieces))
            return TimeSpan.Zero;
        return time is { } all && all * 0.1 < Longest ? all * 0.1 : Longest;
    }

    /// <summary>Does it.</summary>
    public void Run()
    {
        if (search.Best.Cuts.Length == 0 || search.Expired)
            return;
        relaxation.SolveWhole(toTheEnd: true);
        using var choice = new ObjectivesProgram(search.Model, search.Best, Candidates());
        if (choice.Solve(search) is { } plan)
            search.Prefer(plan);
    }

    // All patterns that a plan of this cost can use where they are few, else those known and what lies close to them.
    private List<Pattern> Candidates()
    {
        var own = search.Best.Cuts.Select(cut => cut.Pattern);
        var all =
            PatternList.Of(search.Model, relaxation.BestPoint, search.Best.Total, MostPatterns, withGaps: true)
            ?? own.Concat(relaxation.Columns.TakeLast(MostColumns)).SelectMany(Near).Take(MostPatterns);
        return [.. own.Concat(all).Distinct()];
    }

    // The pattern itself on every stock that takes it, and with pieces of one item left out.
    private IEnumerable<Pattern> Near(Pattern pattern)
    {
        var used = pattern.Used(search.Model);
        for (var kind = 0; kind < search.Model.Kinds.Length; kind++)
            if (search.Model.Kinds[kind].Capacity >= used)
                yield return pattern.On(kind);
        for (var at = 0; at < pattern.Pieces.Length && pattern.Pieces.Length > 1; at++)
            yield return new Pattern(pattern.Kind, [.. pattern.Pieces.Where((_, other) => other != at)]);
        for (var at = 0; at < pattern.Pieces.Length; at++)
            if (pattern.Pieces[at].Count > 1)
                yield return new Pattern(
                    pattern.Kind,
                    [.. pattern.Pieces.Select((p, i) => i == at ? p with { Count = p.Count - 1 } : p)]
                );
    }
}
