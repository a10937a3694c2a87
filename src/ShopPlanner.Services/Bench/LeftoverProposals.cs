using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Bench;

internal sealed class LeftoverProposals(ShopWork work, IWorkService making) : ILeftoverProposals
{
    public async Task<ImmutableArray<ProposedLeftover>> OfAsync(
        BenchView view,
        BenchStock stock,
        bool allCutsMade,
        CancellationToken cancel = default
    )
    {
        var left = Remaining.Of(view, stock, allCutsMade);
        var serves = new ScrapUses(view, stock, allCutsMade, await WorksAsync(view, cancel)).Of(left);
        var last = await work.ReadAsync(
            db => db.Counters.Where(one => one.Name == Counters.BinTags).Select(one => one.Last).SingleOrDefaultAsync(cancel),
            cancel
        );
        return
        [
            .. left.Select(
                (one, i) =>
                    new ProposedLeftover(
                        one,
                        one.Keep ? StockTags.Of(StockPlace.Bin, ++last) : null,
                        Where(view, stock, AreaOf(view, stock, one)),
                        serves[i]
                    )
            ),
        ];
    }

    /// <summary>Returns where a leftover lies.</summary>
    internal static StockArea AreaOf(BenchView view, BenchStock stock, ExpectedLeftover left)
    {
        if (left.From is { } area)
            return area;
        var planned = view.Plan.Plan.Layouts[stock.Layout].Leftovers[left.Index];
        return new(planned.X, planned.Y, planned.Dx, planned.Dy);
    }

    private async Task<List<WorkView>> WorksAsync(BenchView view, CancellationToken cancel)
    {
        var works = new List<WorkView>();
        foreach (var project in view.Plan.Order.Projects.Distinct())
            if (await making.GetAsync(project, cancel) is { } one)
                works.Add(one);
        return works;
    }

    // As the drawing shows it: an end or edge that it reaches up to a trim or a kerf.
    private static string Where(BenchView view, BenchStock stock, StockArea area)
    {
        var (whole, saw) = (PlanLayouts.StockOf(view.Plan, stock.Layout), view.Plan.Request.Saw);
        var isBoard = PlanLayouts.IsBoard(view.Plan, stock.Layout);
        var near = saw.Kerf + (isBoard ? saw.BoardEndTrim : saw.SheetEdgeTrim);
        var (left, right) = (area.X <= near, whole.Length - area.X - area.Dx <= near);
        var (top, bottom) = (area.Y <= near, whole.Width - area.Y - area.Dy <= near);
        var along = (left, right) switch
        {
            (true, true) => StockEdges.None,
            (true, false) => StockEdges.Near,
            (false, true) => StockEdges.Far,
            _ => StockEdges.Ends,
        };
        var across = (top, bottom) switch
        {
            (true, true) => StockEdges.None,
            (true, false) => StockEdges.Front,
            (false, true) => StockEdges.Back,
            _ => StockEdges.Front | StockEdges.Back,
        };
        var isInside = along == StockEdges.Ends || across == (StockEdges.Front | StockEdges.Back);
        return isInside ? "In the middle"
            : (along | across) == StockEdges.None ? "All of it"
            : BadPlaceWords.Name(along | across);
    }
}
