using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Sawing;

/// <summary>Facts of a plan's layouts that page, bench and packet share: stock, material, cuts with the pieces they give,
/// numbers.</summary>
public static class PlanLayouts
{
    /// <summary>Whether the layout's stock is a board.</summary>
    public static bool IsBoard(PlanView plan, int layoutIndex) =>
        MaterialOf(plan, StockOf(plan, layoutIndex)).Form == StockForm.Board;

    /// <summary>The size of a layout's stock as it is sold: <c>8 ft</c>, <c>41 3/8 in</c>, <c>4 × 8 ft</c>.</summary>
    public static string Size(PlanView plan, int layoutIndex)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var stock = StockOf(plan, layoutIndex);
        return StockWords.Size(stock.Length, stock.Width, MaterialOf(plan, stock).Width, plan.UnitOfLayout(layoutIndex));
    }

    /// <summary>The edges of a layout's stock that the trim comes off.</summary>
    public static StockEdges EdgesToTrim(PlanView plan, int layoutIndex)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var stock = StockOf(plan, layoutIndex);
        return stock.EdgesToTrim(MaterialOf(plan, stock).Form);
    }

    internal static CutStock StockOf(PlanView plan, int layoutIndex) => StockOf(plan.Request, plan.Plan.Layouts[layoutIndex]);

    internal static CutMaterial MaterialOf(PlanView plan, CutStock stock) => MaterialOf(plan.Request, stock);

    internal static ImmutableArray<TracedCut> Trace(PlanView plan, int layoutIndex) =>
        Trace(plan.Request, plan.Plan.Layouts[layoutIndex]);

    internal static ImmutableArray<TracedCut> Trace(CutRequest request, Layout layout)
    {
        var stock = StockOf(request, layout);
        return CutTrace.Follow(layout, MaterialOf(request, stock).Form, stock.Length, stock.Width, request.Saw.Kerf);
    }

    private static CutStock StockOf(CutRequest request, Layout layout) => request.Stock.Single(stock => stock.Id == layout.Stock);

    private static CutMaterial MaterialOf(CutRequest request, CutStock stock) =>
        request.Materials.Single(material => material.Id == stock.Material);

    internal static HashSet<int> FreedBy(PlanView plan, int layoutIndex, HashSet<int> made)
    {
        var pieces = plan.Plan.Layouts[layoutIndex].Pieces;
        var freed = Trace(plan, layoutIndex).Where(cut => made.Contains(cut.Cut.N)).SelectMany(PartsOf).ToHashSet();
        return [.. Enumerable.Range(0, pieces.Length).Where(i => freed.Contains((pieces[i].Part, pieces[i].X, pieces[i].Y)))];
    }

    /// <summary>Returns the pieces of a layout, by their index, that one of its boards or sheets has given. A piece that no cut
    /// frees is as long as its board, and is there when the board is finished.</summary>
    /// <param name="request">What was planned.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="made">Numbers of the cuts that are made.</param>
    /// <param name="isFinished">Whether nothing more is cut from it.</param>
    internal static IEnumerable<int> Given(CutRequest request, Layout layout, HashSet<int> made, bool isFinished)
    {
        var cuts = Trace(request, layout);
        var freed = cuts.Where(cut => made.Contains(cut.Cut.N)).SelectMany(PartsOf).ToHashSet();
        var byCut = cuts.SelectMany(PartsOf).ToHashSet();
        return Enumerable
            .Range(0, layout.Pieces.Length)
            .Where(i =>
                (layout.Pieces[i].Part, layout.Pieces[i].X, layout.Pieces[i].Y) is var piece
                && (freed.Contains(piece) || (isFinished && !byCut.Contains(piece)))
            );
    }

    /// <summary>The parts that a cut finishes, with their places.</summary>
    internal static IEnumerable<(string Part, Length X, Length Y)> PartsOf(TracedCut cut)
    {
        if (cut.Cut.FirstPart is { } first)
            yield return (first, cut.First.X, cut.First.Y);
        if (cut.Cut.SecondPart is { } second && cut.Second is { } area)
            yield return (second, area.X, area.Y);
    }

    /// <summary>The numbers of a layout's boards or sheets among all of the plan: <c>4</c>, <c>5–7</c>.</summary>
    internal static string Number(PlanView plan, int index)
    {
        var (before, copies) = (Before(plan, index), plan.Plan.Layouts[index].Copies);
        return copies == 1 ? $"{before + 1}" : $"{before + 1}–{before + copies}";
    }

    internal static int Before(PlanView plan, int index) => plan.Plan.Layouts.Take(index).Sum(layout => layout.Copies);
}
