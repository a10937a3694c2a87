using ShopPlanner.Cutting.Sheets.Bounds;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Sheets.Search;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>
/// What is known of the least cost while a search goes on: quick bounds at first; a tiny job is solved for certain at once, a
/// small one when the search does not come to an end soon; meanwhile column generation raises the bounds.
/// </summary>
internal sealed class Proof(SheetModel model, SearchClock clock) : ISearchBound, IDisposable
{
    // Sets of pieces of a job that is solved at once, and steps for it.
    private const double TinySets = 5000;
    private const long TinyWork = 40_000_000;

    // Steps for a job that is not tiny, and after how many meetings of the search it gets them.
    private const long SmallWork = 1_500_000_000;
    private const int SmallTurn = 8;

    // Steps of column generation, at first and after each later meeting.
    private const long FirstColumnWork = 20_000_000;
    private const long ColumnWork = 30_000_000;

    // Steps that a round of column generation may take, at first and later.
    private const long GridWork = 15_000_000;
    private const long FineGridWork = 120_000_000;

    // Share of the time after which nothing more is proven.
    private const double Share = 0.9;

    private List<CoverRow> rows = [];
    private PlanBounds bounds = new(0, 0);
    private ColumnBound? columns;
    private int turns;

    public long Cost => bounds.Cost;

    public long Price => bounds.Price;

    private bool IsTiny => PieceSets.CountFor(model) <= TinySets;

    private bool IsOver => clock.IsPast(Share);

    /// <summary>Before the search: the packing, or a better one.</summary>
    public Packing Begin(Packing best)
    {
        if (model.Pieces == 0)
            return best;
        rows = new ScaleBound(model).Rows();
        bounds = PlanBounds.Of(model, rows);
        return best.Price > Price && IsTiny ? Exactly(best, TinyWork) : best;
    }

    /// <summary>After a meeting of the search: the packing, or a better one.</summary>
    public Packing Advance(Packing best)
    {
        turns++;
        if (best.Cost <= Cost || IsOver)
            return best;
        if (turns == SmallTurn && !IsTiny)
            best = Exactly(best, SmallWork);
        if (best.Cost > Cost)
            RaiseByColumns(best);
        return best;
    }

    /// <summary>The packing that places most, if that can be found for certain.</summary>
    public ExactAnswer? PlaceMost(Packing best) => IsTiny && Job(TinyWork) is { } job ? job.PlaceMost(best, clock) : null;

    private Packing Exactly(Packing best, long steps)
    {
        if (Job(steps) is not { } job)
            return best;
        var answer = job.Lower(best, clock);
        if (answer.IsProven)
            bounds = new(answer.Packing.Cost, answer.Packing.Price);
        return answer.Packing;
    }

    private SmallJob? Job(long steps) => SmallJob.Of(model, new WorkBudget(steps, () => IsOver));

    private void RaiseByColumns(Packing best)
    {
        columns = turns == 1 ? FirstColumns(best) : Refined(columns, best);
        if (columns is null or { IsDone: true })
            return;
        var before = columns.Rows.Count;
        columns.Advance(turns == 1 ? FirstColumnWork : ColumnWork, best.Price);
        if (columns.Rows.Count > before)
            bounds = bounds.Raised(PlanBounds.Of(model, [.. rows, .. columns.Rows.TakeLast(3)]));
    }

    private ColumnBound? FirstColumns(Packing best) =>
        CutGrid.Of(model, GridWork) is { } grid ? ColumnBound.From(model, grid, best, () => IsOver) : null;

    // Once, when nothing more comes of a coarse grid.
    private ColumnBound? Refined(ColumnBound? coarse, Packing best)
    {
        if (coarse is not { IsDone: true, IsRough: true } || CutGrid.Of(model, FineGridWork) is not { } grid)
            return coarse;
        using (coarse)
            return coarse.On(grid, best);
    }

    public void Dispose() => columns?.Dispose();
}
