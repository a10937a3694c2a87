namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Dives from the relaxation to a whole plan: cuts what the relaxation cuts whole times, then its most decided pattern once
/// more, and solves the relaxation of the rest again, until nothing is wanted.
/// </summary>
internal sealed class Dive(Search search, Relaxation relaxation, Random random)
{
    private readonly CuttingModel _model = search.Model;
    private readonly List<(Pattern Pattern, int Times)> _cuts = [];
    private long _least;

    /// <summary>One dive; tells every plan better than the search's best at its beginning.</summary>
    /// <param name="shake">How far the choice may stray from the most decided pattern; zero for not at all.</param>
    /// <param name="found">Called with each plan found that is better than those before.</param>
    public void Run(double shake, Action<Plan> found)
    {
        _least = search.Best.Total;
        var wanted = (int[])_model.Demands.Clone();
        var left = GreedyStart.Limits(_model);
        _cuts.Clear();
        long spent = 0;
        while (!search.Expired && _least > search.Bound && wanted.Any(count => count > 0))
        {
            if (relaxation.SolveRest(wanted, left) is not { } point)
                break;
            if (spent + Math.Ceiling(point.Objective - 1e-6) >= _least)
                return;
            var before = _cuts.Count;
            TakeWhole(point, wanted, left);
            if (_cuts.Count == before && !TakeOne(point, wanted, left, shake))
                break;
            spent = _cuts.Sum(cut => cut.Times * _model.Kinds[cut.Pattern.Kind].Cost);
            TellWithRest(wanted, left, found);
        }

        TellWithRest(wanted, left, found);
    }

    private void TellWithRest(int[] wanted, int[] left, Action<Plan> found)
    {
        var plan = Plan.Of(_model, _cuts.Concat(GreedyStart.Fill(_model, wanted, left)));
        if (plan.Total >= _least)
            return;
        _least = plan.Total;
        found(plan);
    }

    private void TakeWhole(MasterPoint point, int[] wanted, int[] left)
    {
        for (var column = 0; column < point.Times.Length; column++)
            Take(relaxation.Columns[column], (int)Math.Floor(point.Times[column] + 1e-6), wanted, left);
    }

    private bool TakeOne(MasterPoint point, int[] wanted, int[] left, double shake)
    {
        var best = -1;
        var bestScore = 0.0;
        for (var column = 0; column < point.Times.Length; column++)
        {
            if (point.Times[column] < 1e-6)
                continue;
            var score = point.Times[column] + (shake * random.NextDouble());
            if (score <= bestScore || relaxation.Columns[column].TimesWithin(wanted) == 0)
                continue;
            (best, bestScore) = (column, score);
        }

        return best >= 0 && Take(relaxation.Columns[best], 1, wanted, left);
    }

    private bool Take(Pattern pattern, int times, int[] wanted, int[] left)
    {
        times = Math.Min(times, Math.Min(left[pattern.Kind], pattern.TimesWithin(wanted)));
        if (times <= 0)
            return false;
        foreach (var piece in pattern.Pieces)
            wanted[piece.Item] -= piece.Count * times;
        left[pattern.Kind] -= times;
        _cuts.Add((pattern, times));
        return true;
    }
}
