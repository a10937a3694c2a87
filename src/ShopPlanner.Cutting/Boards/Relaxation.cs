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

    /// <summary>The feasible dual point of the highest bound; null before there is one.</summary>
    public DualPoint? BestPoint { get; private set; }

    /// <summary>Adds patterns found elsewhere.</summary>
    public void Add(IEnumerable<Pattern> patterns)
    {
        foreach (var pattern in patterns) _master.Add(pattern);
    }

    /// <summary>Solves for the whole problem and raises the search's bound; null when time ran out or the solver failed.</summary>
    /// <param name="toTheEnd">True to go on when the rounded bound can rise no more, for the sake of the dual point.</param>
    public MasterPoint? SolveWhole(bool toTheEnd = false)
    {
        var model = search.Model;
        _master.Restrict(model.Demands, GreedyStart.Limits(model));
        while (_master.Solve(search.Left) is { } point)
        {
            var (values, scale) = DualPoint.Whole(model, point.Items);
            var answer = _knapsack.Solve(values, model.Demands, Thresholds(point, scale));
            Raise(values, scale, answer.Most);
            var settled = !toTheEnd && search.Bound >= Math.Ceiling(point.Objective - 1e-6);
            if (settled || !AddAll(answer.Patterns)) return point;
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
            var (values, scale) = DualPoint.Whole(search.Model, point.Items);
            var answer = _knapsack.Solve(values, wanted, Thresholds(point, scale, left));
            if (!AddAll(answer.Patterns)) return point;
        }

        return null;
    }

    public void Dispose() => _master.Dispose();

    private void Raise(long[] values, long scale, long[] most)
    {
        var point = DualPoint.Of(search.Model, values, most, scale);
        search.Raise(point.Total);
        if (point.Beats(BestPoint)) BestPoint = point;
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
