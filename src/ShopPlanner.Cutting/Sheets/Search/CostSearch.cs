using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>
/// Independent searches, one for each worker, that meet after a fixed number of rounds to share the best: the same plan for
/// the same seed however fast each runs.
/// </summary>
internal sealed class CostSearch(SheetModel model, SearchControl control, SearchLimits limits)
{
    // Work between two meetings, in rounds times pieces: a fraction of a second.
    private const int WorkTogether = 200_000;

    private readonly int roundsTogether = Math.Clamp(WorkTogether / Math.Max(1, model.Pieces), 50, 2000);

    // Meetings without a better plan before the covering model is asked, the first time.
    private const int FirstCover = 30;

    private readonly Improver[] workers =
    [
        .. Enumerable
            .Range(0, Math.Max(1, control.Workers))
            .Select(i => new Improver(model, (control.Seed * 1000L) + i, SearchParameters.Of(i))),
    ];

    private int meetings;

    /// <summary>Places as much area as it can, at any cost.</summary>
    public Packing PlaceMost(Packing best, double share)
    {
        Start(best, long.MaxValue);
        while (!best.IsComplete && !limits.IsOver(share))
            best = Together(best, long.MaxValue, share);
        return best;
    }

    /// <summary>Lowers the price of a complete packing; once its cost is proven, the rest of the price gets a short
    /// while.</summary>
    public Packing Lower(Packing best, ISearchBound bound, double share, Action<Packing> tell)
    {
        var goal = long.MaxValue;
        var nextCover = FirstCover;
        while (best.Price > bound.Price && !limits.IsOver(share))
        {
            if (best.Cost <= bound.Cost)
                share = Math.Min(share, Math.Max(limits.Share(), 0.001) * 1.5);
            if (goal != best.Price - model.PriceStep)
                Start(best, goal = best.Price - model.PriceStep);
            best = Together(best, goal, share);
            if (++meetings >= nextCover && best.Price > goal && !limits.IsOver(share))
            {
                best = Cover(best, goal);
                nextCover = meetings + (meetings / 2) + 1;
            }
            best = bound.Advance(best);
            tell(best);
        }
        return best;
    }

    // The best choice among all layouts met; when it is not complete, the search furthest from its goal takes it.
    private Packing Cover(Packing best, long goal)
    {
        var pool = Met();
        var hint = workers.MinBy(w => w.Now.LeftArea)!.Now;
        if (new CoverSearch(model, limits).Run(pool, hint, goal) is not { } chosen)
            return best;
        var furthest = workers.MaxBy(w => w.Now.LeftArea)!;
        if (chosen.LeftArea < furthest.Now.LeftArea)
            furthest.Take(chosen);
        return chosen.IsComplete ? chosen : best;
    }

    /// <summary>All layouts that the workers came by.</summary>
    public PatternPool Met()
    {
        var pool = new PatternPool(model);
        foreach (var worker in workers)
            pool.AddAll(worker.Pool);
        return pool;
    }

    private void Start(Packing best, long goal)
    {
        foreach (var worker in workers)
            worker.Start(best, goal);
    }

    private Packing Together(Packing best, long goal, double share)
    {
        var rounds = limits.Rounds(roundsTogether);
        Parallel.ForEach(workers, w => w.Run(goal, rounds, () => limits.Clock.IsPast(share)));
        limits.Count(Math.Max(1, rounds));
        foreach (var worker in workers)
        {
            if (Constructor.IsBetter(worker.Now, best))
                best = worker.Now.Clone();
        }
        return best;
    }
}
