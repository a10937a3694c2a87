namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Column generation (Gilmore and Gomory 1961): the relaxation over known patterns gives each item a value, the knapsack finds
/// patterns worth more than their stock, until there is none.
/// </summary>
internal sealed class Relaxation(Search search) : IDisposable
{
    private readonly RestrictedMaster master = new(search.Model);
    private readonly IKnapsack knapsack = Knapsacks.For(search.Model);

    /// <summary>The patterns known so far.</summary>
    public List<Pattern> Columns => master.Columns;

    /// <summary>The feasible dual point of the highest bound; at first the one that values items by size.</summary>
    public DualPoint BestPoint { get; private set; } = DualPoint.BySize(search.Model);

    /// <summary>Adds patterns found elsewhere.</summary>
    public void Add(IEnumerable<Pattern> patterns)
    {
        foreach (var pattern in patterns)
            master.Add(pattern);
    }

    /// <summary>Solves for the whole problem and raises the search's bound; null when time ran out or the solver
    /// failed.</summary>
    /// <param name="toTheEnd">True to go on when the rounded bound can rise no more, for the sake of the dual point.</param>
    /// <param name="closeTo">Share of the total that the bound may fall short by when it ends, where that is a unit or more;
    /// the last of it takes the longest.</param>
    public MasterPoint? SolveWhole(bool toTheEnd = false, double closeTo = 0)
    {
        var model = search.Model;
        master.Restrict(model.Demands, GreedyStart.Limits(model));
        while (master.Solve(search.Left) is { } point)
        {
            if (closeTo * point.Objective >= 1 && point.Objective - search.Bound < closeTo * point.Objective)
                return point;
            if (!(knapsack.IsSlow && Guess(point)) && !Price(point, toTheEnd))
                return point;
            if (search.Expired)
                return null;
        }

        return null;
    }

    /// <summary>Duals that are best for slightly perturbed demands; null when time ran out or the solver failed.</summary>
    public double[]? PerturbedDuals(Random random)
    {
        master.Restrict(search.Model.Demands, GreedyStart.Limits(search.Model));
        master.Perturb(search.Model.Demands, random);
        return Settle()?.Items;
    }

    /// <summary>The feasible dual point of given values, scaled down where need be.</summary>
    public DualPoint PointOf(double[] duals)
    {
        var (values, scale) = DualPoint.Whole(search.Model, duals);
        var never = search.Model.Kinds.Select(_ => long.MaxValue).ToArray();
        return DualPoint.Of(search.Model, values, knapsack.Solve(values, search.Model.Demands, never).Most, scale);
    }

    private MasterPoint? Settle()
    {
        while (master.Solve(search.Left) is { } point && !search.Expired)
        {
            var (values, scale) = DualPoint.Whole(search.Model, point.Items);
            var answer = knapsack.Solve(values, search.Model.Demands, Thresholds(point, scale));
            Raise(values, scale, answer.Most);
            if (!AddAll(answer.Patterns))
                return point;
        }

        return null;
    }

    // Prices between the best feasible dual point and the master's own, which swings wildly (Wentges, International
    // Transactions in Operational Research 4, 1997): a pattern worth adding there is worth adding here too, for it is not at the
    // feasible point. Where there is none the mixed point is feasible itself, and better; the next lies closer to the master's.
    private bool Price(MasterPoint point, bool toTheEnd)
    {
        for (var weight = SmoothingFactor; ; weight = weight < 0.1 ? 0 : weight / 2)
        {
            if (!toTheEnd && search.Bound >= Math.Ceiling(point.Objective - 1e-6))
                return false;
            var mixed = Mix(point, BestPoint, weight);
            var (values, scale) = DualPoint.Whole(search.Model, mixed.Items);
            var answer = knapsack.Solve(values, search.Model.Demands, Thresholds(mixed, scale));
            Raise(values, scale, answer.Most);
            var added = AddAll(answer.Patterns);
            if (added)
                AddDisjoint(values, answer.Patterns, Thresholds(mixed, scale));
            if (added)
                return true;
            if (weight == 0)
                return false;
        }
    }

    private bool Guess(MasterPoint point)
    {
        var (values, scale) = DualPoint.Whole(search.Model, point.Items);
        var thresholds = Thresholds(point, scale);
        var patterns = knapsack.Guess(values, search.Model.Demands, thresholds);
        var added = AddAll(patterns);
        if (added)
            AddDisjoint(values, patterns, thresholds);
        return added;
    }

    // More patterns for the same values, each without the pieces of those before: patterns that go together, of which a plan
    // can be made, where patterns alike would stand in each other's way.
    private void AddDisjoint(long[] values, List<Pattern> patterns, long[] thresholds)
    {
        var wanted = (int[])search.Model.Demands.Clone();
        for (var round = 0; round < DisjointRounds && patterns.Count > 0 && !search.Expired; round++)
        {
            foreach (var pattern in patterns)
            {
                var times = pattern.TimesWithin(wanted);
                foreach (var piece in pattern.Pieces)
                    wanted[piece.Item] -= times * piece.Count;
            }

            patterns = knapsack.Guess(values, wanted, thresholds);
            Add(patterns);
        }
    }

    private const int DisjointRounds = 32;
    private const double SmoothingFactor = 0.8;

    private static MasterPoint Mix(MasterPoint point, DualPoint best, double weight) =>
        point with
        {
            Items = [.. point.Items.Select((dual, i) => ((1 - weight) * dual) + (weight * best.Values[i] / best.Scale))],
            Kinds = [.. point.Kinds.Select((dual, k) => ((1 - weight) * dual) + (weight * best.Surcharges[k] / best.Scale))],
        };

    /// <summary>Solves for what is still wanted within what is left, to guide a dive; no bound follows
    /// from it.</summary>
    public MasterPoint? SolveResidual(int[] wanted, int[] left)
    {
        master.Restrict(wanted, left);
        while (master.Solve(search.Left) is { } point)
        {
            if (search.Expired)
                return point;
            var (values, scale) = DualPoint.Whole(search.Model, point.Items);
            if (!AddAll(knapsack.Guess(values, wanted, Thresholds(point, scale, left))))
                return point;
        }

        return null;
    }

    public void Dispose() => master.Dispose();

    private void Raise(long[] values, long scale, long[] most)
    {
        var point = DualPoint.Of(search.Model, values, most, scale);
        search.Raise(point.Total);
        if (point.Beats(BestPoint))
            BestPoint = point;
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
