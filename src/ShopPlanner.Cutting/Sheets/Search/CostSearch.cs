using ShopPlanner.Cutting.Sheets.Bounds;
using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>
/// Independent searches, one for each worker, that meet after a fixed number of rounds to share the best: the same plan for
/// the same seed however fast each runs.
/// </summary>
internal sealed class CostSearch(SheetModel model, SearchControl control, Effort effort)
{
    private const int RoundsTogether = 2000;

    private readonly Improver[] workers = [.. Enumerable.Range(0, Math.Max(1, control.Workers))
        .Select(i => new Improver(model, (control.Seed * 1000L) + i))];

    /// <summary>Places as much area as it can, at any cost.</summary>
    public Packing PlaceMost(Packing best, double share)
    {
        Start(best, long.MaxValue);
        while (!best.IsComplete && !effort.IsOver(share))
            best = Together(best, long.MaxValue, share);
        return best;
    }

    /// <summary>Lowers the price of a complete packing; once its cost is proven, the rest of the price gets a short while.</summary>
    public Packing Lower(Packing best, PlanBounds bounds, double share, Action<Packing> tell)
    {
        var goal = long.MaxValue;
        while (best.Price > bounds.Price && !effort.IsOver(share))
        {
            if (best.Cost <= bounds.Cost)
                share = Math.Min(share, Math.Max(effort.Share(), 0.001) * 1.5);
            if (goal != best.Price - model.PriceStep)
                Start(best, goal = best.Price - model.PriceStep);
            best = Together(best, goal, share);
            tell(best);
        }
        return best;
    }

    private void Start(Packing best, long goal)
    {
        foreach (var worker in workers)
            worker.Start(best, goal);
    }

    private Packing Together(Packing best, long goal, double share)
    {
        var rounds = effort.Rounds(RoundsTogether);
        Parallel.ForEach(workers, w => w.Run(goal, rounds, () => effort.Clock.IsPast(share)));
        effort.Count(Math.Max(1, rounds));
        foreach (var worker in workers)
        {
            if (Constructor.IsBetter(worker.Now, best))
                best = worker.Now.Clone();
        }
        return best;
    }
}
