using ShopPlanner.Cutting.Sheets.Bounds;
using ShopPlanner.Cutting.Sheets.Finish;
using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>Runs first packings, bounds and improvement, and keeps the best.</summary>
internal sealed class Portfolio(SheetModel model, SearchControl control, SearchClock clock)
{
    private const int RoundsTogether = 2000;

    private Packing best = new(model);
    private long bound;

    public SheetSolution Run()
    {
        best = new Constructor(model).Run(() => clock.IsOver);
        bound = Bound();
        Tell();
        Improve();
        return new SolutionWriter(model).Write(best, bound);
    }

    private long Bound()
    {
        var placed = model.Types.Select((t, i) => t.Demand - best.Left[i]).ToArray();
        return CoverCost.Whole(model, new ScaleBound(model, placed).Rows());
    }

    private void Improve()
    {
        var workers = Enumerable.Range(0, Math.Max(1, control.Workers))
            .Select(i => new Improver(model, (control.Seed * 1000L) + i)).ToArray();
        var goal = long.MaxValue;
        for (var rounds = 0L; !IsDone(rounds); rounds += RoundsTogether)
        {
            if (goal != Goal())
            {
                goal = Goal();
                foreach (var worker in workers)
                    worker.Start(best, goal);
            }
            Parallel.ForEach(workers, w => w.Run(goal, RoundsTogether, () => clock.IsOver));
            foreach (var worker in workers)
                Consider(worker.Now);
            Tell();
        }
    }

    private long Goal() => best.IsComplete ? best.Cost - model.CostStep : long.MaxValue;

    private bool IsDone(long rounds) =>
        clock.IsOver || rounds >= control.Iterations || (best.IsComplete && best.Cost <= bound);

    private void Consider(Packing packing)
    {
        if (Constructor.IsBetter(packing, best))
            best = packing.Clone();
    }

    private void Tell() => clock.Tell(best.IsComplete ? best.Cost : null, bound);
}
