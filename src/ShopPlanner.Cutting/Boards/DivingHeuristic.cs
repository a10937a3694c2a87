namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Dives from the relaxation to a whole plan: cuts what the relaxation cuts whole times, then its most decided pattern once
/// more, and solves the relaxation of the rest again, until nothing is wanted.
/// </summary>
internal sealed class DivingHeuristic(Search search, Relaxation relaxation, Random random)
{
    private readonly CuttingModel model = search.Model;
    private readonly List<(Pattern Pattern, int Times)> cuts = [];
    private long least;

    /// <summary>One dive; tells every plan better than the search's best at its beginning.</summary>
    /// <param name="randomization">How far the choice may stray from the most decided pattern; zero for not at all.</param>
    /// <param name="found">Called with each plan found that is better than those before.</param>
    public void Run(double randomization, Action<Plan> found)
    {
        least = search.Best.Total;
        var wanted = (int[])model.Demands.Clone();
        var left = GreedyStart.Limits(model);
        cuts.Clear();
        long spent = 0;
        while (!search.Expired && least > search.Bound && wanted.Any(count => count > 0))
        {
            if (relaxation.SolveResidual(wanted, left) is not { } point)
                break;
            if (spent + Math.Ceiling(point.Objective - 1e-6) >= least)
                return;
            var before = cuts.Count;
            TakeWhole(point, wanted, left);
            if (cuts.Count == before && !TakeOne(point, wanted, left, randomization))
                break;
            spent = cuts.Sum(cut => cut.Times * model.Kinds[cut.Pattern.Kind].Cost);
            TellWithRest(wanted, left, found);
        }

        TellWithRest(wanted, left, found);
    }

    private void TellWithRest(int[] wanted, int[] left, Action<Plan> found)
    {
        var plan = Plan.Of(model, cuts.Concat(GreedyStart.Fill(model, wanted, left)));
        if (plan.Total >= least)
            return;
        least = plan.Total;
        found(plan);
    }

    private void TakeWhole(MasterPoint point, int[] wanted, int[] left)
    {
        for (var column = 0; column < point.Times.Length; column++)
            Take(relaxation.Columns[column], (int)Math.Floor(point.Times[column] + 1e-6), wanted, left);
    }

    private bool TakeOne(MasterPoint point, int[] wanted, int[] left, double randomization)
    {
        var best = -1;
        var bestScore = 0.0;
        for (var column = 0; column < point.Times.Length; column++)
        {
            if (point.Times[column] < 1e-6)
                continue;
            var score = point.Times[column] + (randomization * random.NextDouble());
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
        cuts.Add((pattern, times));
        return true;
    }
}
