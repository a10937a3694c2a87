namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Column generation (Gilmore and Gomory 1961): the relaxation over known patterns gives each item a value, the knapsack finds
/// patterns worth more than their stock, until there is none.
/// </summary>
internal sealed class Relaxation(Search search) : IDisposable
{
    private readonly LinearMaster _master = new(search.Model);
    private readonly IKnapsack _knapsack = Knapsacks.For(search.Model);

    /// <summary>The patterns known so far.</summary>
    public List<Pattern> Columns => _master.Columns;

    /// <summary>Values whose bound was best, and their scale; empty before the whole problem was solved.</summary>
    public (long[] Values, long Scale) BestDuals { get; private set; } = ([], 1);

    /// <summary>Adds patterns found elsewhere.</summary>
    public void Add(IEnumerable<Pattern> patterns)
    {
        foreach (var pattern in patterns) _master.Add(pattern);
    }

    /// <summary>Solves for the whole problem and raises the search's bound; null when time ran out or the solver failed.</summary>
    public MasterPoint? SolveWhole()
    {
        var model = search.Model;
        _master.Restrict(model.Demands, GreedyStart.Limits(model));
        while (_master.Solve(search.Left) is { } point)
        {
            var (values, scale) = SafeBound.Whole(model, point.Items);
            var answer = _knapsack.Solve(values, model.Demands, Thresholds(point, scale));
            Raise(values, scale, SafeBound.Of(model, values, answer.Most, scale));
            if (search.Bound >= Math.Ceiling(point.Objective - 1e-6) || !AddAll(answer.Patterns)) return point;
            if (search.Expired) return null;
        }

        return null;
    }

    /// <summary>Solves for what is still wanted within what is left, to guide a dive, in so many rounds of
    /// pricing at most; no bound follows from it.</summary>
    public MasterPoint? SolveRest(int[] wanted, int[] left, int rounds)
    {
        _master.Restrict(wanted, left);
        for (var round = 0; _master.Solve(search.Left) is { } point; round++)
        {
            if (round == rounds || search.Expired) return point;
            var (values, scale) = SafeBound.Whole(search.Model, point.Items);
            var answer = _knapsack.Solve(values, wanted, Thresholds(point, scale, left));
            if (!AddAll(answer.Patterns)) return point;
        }

        return null;
    }

    public void Dispose() => _master.Dispose();

    private void Raise(long[] values, long scale, long bound)
    {
        if (BestDuals.Values.Length == 0 || bound > search.Bound) BestDuals = (values, scale);
        search.Raise(bound);
    }

    private long[] Thresholds(MasterPoint point, long scale, int[]? left = null)
    {
        var thresholds = new long[search.Model.Kinds.Length];
        for (var kind = 0; kind < thresholds.Length; kind++)
        {
            var price = (search.Model.Kinds[kind].Cost + point.Kinds[kind]) * scale;
            thresholds[kind] = left?[kind] == 0 ? long.MaxValue : (long)Math.Ceiling(price * (1 + 1e-9)) + (scale >> 30);
        }

        return thresholds;
    }

    private bool AddAll(List<Pattern> patterns)
    {
        var before = Columns.Count;
        Add(patterns);
        return Columns.Count > before;
    }
}
