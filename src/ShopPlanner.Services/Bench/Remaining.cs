using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Bench;

/// <summary>A leftover to be measured.</summary>
/// <param name="Index">Into the layout's leftovers; −1 for one that was not planned.</param>
/// <param name="Length">As it should be.</param>
/// <param name="Width">As it should be.</param>
/// <param name="Keep">Worth keeping.</param>
public sealed record ExpectedLeftover(int Index, Length Length, Length Width, bool Keep)
{
    /// <summary>Of one that was not planned: the part of the stock that it is.</summary>
    public StockArea? From { get; init; }
}

/// <summary>What should be left of a board or sheet when nothing more is cut from it.</summary>
public static class Remaining
{
    /// <summary>The leftovers, those worth keeping first.</summary>
    /// <param name="view">The plan at the bench.</param>
    /// <param name="stock">The board or sheet.</param>
    /// <param name="allCutsMade">Whether every cut was made, ticked or not.</param>
    public static ImmutableArray<ExpectedLeftover> Of(BenchView view, BenchStock stock, bool allCutsMade)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(stock);
        var left = allCutsMade || stock.Cuts.All(cut => cut.Made) ? Planned(view, stock) : InHand(view.Plan, stock);
        return [.. left.OrderByDescending(one => one.Keep)];
    }

    /// <summary>Returns what lies there once some cuts of a layout are made: all that is no finished part.</summary>
    internal static IEnumerable<StockArea> InHand(PlanView plan, int layout, HashSet<int> made)
    {
        var (whole, cuts) = (PlanLayouts.StockOf(plan, layout), PlanLayouts.Trace(plan, layout));
        var area = new StockArea(Length.Zero, Length.Zero, whole.Length, whole.Width);
        var name = PlanLayouts.IsBoard(plan, layout) ? "board" : "sheet";
        return CutTrace
            .InHand((name, area), cuts.Where(cut => made.Contains(cut.Cut.N)))
            .Where(piece => piece.Dx.IsPositive && piece.Dy.IsPositive);
    }

    private static IEnumerable<ExpectedLeftover> Planned(BenchView view, BenchStock stock) =>
        view.Plan.Plan.Layouts[stock.Layout].Leftovers.Select((left, i) => new ExpectedLeftover(i, left.Dx, left.Dy, left.Keep));

    private static IEnumerable<ExpectedLeftover> InHand(PlanView plan, BenchStock stock)
    {
        var (whole, made) = (PlanLayouts.StockOf(plan, stock.Layout), stock.Cuts.Where(cut => cut.Made).Select(cut => cut.Cut.N));
        var (keep, material) = (plan.Request.Keep, plan.Request.Materials.Single(material => material.Id == whole.Material));
        return InHand(plan, stock.Layout, made.ToHashSet())
            .Select(piece => new ExpectedLeftover(-1, piece.Dx, piece.Dy, keep.Keeps(material, piece.Dx, piece.Dy))
            {
                From = piece,
            });
    }
}
