using System.Collections.Immutable;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Pictures;

/// <summary>Makes the pictures of a plan's layouts, for screen and paper alike.</summary>
public static class PlanPictures
{
    /// <summary>A layout as planned; where several boards are cut alike, each piece carries the marks of all copies.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="layoutIndex">Index into its layouts.</param>
    public static LayoutPicture ForLayout(PlanView plan, int layoutIndex)
    {
        var marks = new PlanMarks(plan);
        return Make(
            plan,
            layoutIndex,
            Title(plan, layoutIndex, null),
            piece => (marks.OfAllCopies(layoutIndex, piece), false),
            _ => CutState.Planned,
            []
        );
    }

    /// <summary>One physical board or sheet at the bench: its own marks, cuts made and the next one.</summary>
    /// <param name="bench">The plan at the bench.</param>
    /// <param name="number">The board's number, from 1.</param>
    public static LayoutPicture ForBench(BenchView bench, int number)
    {
        var (stock, marks) = (bench.Stocks[number - 1], new PlanMarks(bench.Plan));
        var next = stock.Cuts.FirstOrDefault(cut => !cut.Made)?.Cut.N;
        var made = stock.Cuts.Where(cut => cut.Made).Select(cut => cut.Cut.N).ToHashSet();
        var done = FreedBy(bench.Plan, stock.Layout, made);
        return Make(
            bench.Plan,
            stock.Layout,
            Title(bench.Plan, stock.Layout, stock.Copy),
            piece => (marks.Of(stock.Layout, piece, stock.Copy), done.Contains(piece)),
            n =>
                made.Contains(n) ? CutState.Done
                : n == next ? CutState.Next
                : CutState.Planned,
            [.. stock.Binned.Select(binned => binned.Tag)]
        );
    }

    /// <summary>True where the layout's stock is a board.</summary>
    public static bool IsBoard(PlanView plan, int layoutIndex) =>
        MaterialOf(plan, StockOf(plan, layoutIndex)).Form == StockForm.Board;

    internal static CutStock StockOf(PlanView plan, int layoutIndex) =>
        plan.Request.Stock.Single(stock => stock.Id == plan.Plan.Layouts[layoutIndex].Stock);

    internal static CutMaterial MaterialOf(PlanView plan, CutStock stock) =>
        plan.Request.Materials.Single(material => material.Id == stock.Material);

    internal static ImmutableArray<TracedCut> Trace(PlanView plan, int layoutIndex)
    {
        var stock = StockOf(plan, layoutIndex);
        return CutTrace.Follow(
            plan.Plan.Layouts[layoutIndex],
            MaterialOf(plan, stock).Form,
            stock.Length,
            stock.Width,
            plan.Request.Saw.Kerf
        );
    }

    private static LayoutPicture Make(
        PlanView plan,
        int index,
        string title,
        Func<int, (string Mark, bool Done)> mark,
        Func<int, CutState> state,
        ImmutableArray<string> tags
    )
    {
        var (layout, stock) = (plan.Plan.Layouts[index], StockOf(plan, index));
        var material = MaterialOf(plan, stock);
        return new LayoutPicture(
            title,
            plan.UnitOfLayout(index),
            stock.Length,
            stock.Width,
            material.Thickness,
            plan.Stocks[stock.Id].Tint,
            HasGrain(material),
            [.. layout.Pieces.Select((piece, i) => Piece(plan, piece, mark(i)))],
            Leftovers(layout, tags),
            Trims(plan, stock, material.Form),
            [.. Trace(plan, index).Select(cut => new CutPicture(cut.Cut.N, cut.Kerf, state(cut.Cut.N), cut.Cut.ByStore))]
        );
    }

    private static PiecePicture Piece(PlanView plan, PlacedPiece piece, (string Mark, bool Done) mark) =>
        new(mark.Mark, plan.Parts[piece.Part].Name, new(piece.X, piece.Y, piece.Dx, piece.Dy), piece.Turned, mark.Done);

    // The tags given at the bench belong to the keepers in order, as long as as many went into the bin as were planned.
    private static ImmutableArray<LeftoverPicture> Leftovers(Layout layout, ImmutableArray<string> tags)
    {
        var known = tags.Length == layout.Leftovers.Count(leftover => leftover.Keep);
        var kept = 0;
        return
        [
            .. layout.Leftovers.Select(leftover => new LeftoverPicture(
                new(leftover.X, leftover.Y, leftover.Dx, leftover.Dy),
                leftover.Keep,
                leftover.Keep && known ? tags[kept++] : null
            )),
        ];
    }

    private static ImmutableArray<StockArea> Trims(PlanView plan, CutStock stock, StockForm form)
    {
        if (stock.Offcut)
            return [];
        var (end, edge) = (plan.Request.Saw.BoardEndTrim, plan.Request.Saw.SheetEdgeTrim);
        if (form == StockForm.Board)
            return end.IsPositive ? [new(Length.Zero, Length.Zero, end, stock.Width)] : [];
        if (!edge.IsPositive)
            return [];
        var inside = stock.Width - (edge * 2);
        return
        [
            new(Length.Zero, Length.Zero, stock.Length, edge),
            new(Length.Zero, stock.Width - edge, stock.Length, edge),
            new(Length.Zero, edge, edge, inside),
            new(stock.Length - edge, edge, edge, inside),
        ];
    }

    private static bool HasGrain(CutMaterial material) =>
        material.Form == StockForm.Board || !MaterialCatalogue.TryFindSheet(material.Id, out var sheet) || sheet.HasGrain;

    private static HashSet<int> FreedBy(PlanView plan, int layoutIndex, HashSet<int> made)
    {
        var pieces = plan.Plan.Layouts[layoutIndex].Pieces;
        var freed = Trace(plan, layoutIndex).Where(cut => made.Contains(cut.Cut.N)).SelectMany(PartsOf).ToHashSet();
        return [.. Enumerable.Range(0, pieces.Length).Where(i => freed.Contains((pieces[i].Part, pieces[i].X, pieces[i].Y)))];
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

    private static string Title(PlanView plan, int index, int? copy)
    {
        var name = plan.Stocks[plan.Plan.Layouts[index].Stock];
        var number = copy is { } one ? $"{Before(plan, index) + one}" : Number(plan, index);
        return (name.Tag is { } tag ? $"{tag}: " : "")
            + $"{name.Name}, {number} of {plan.Plan.Layouts.Sum(layout => layout.Copies)}";
    }

    private static int Before(PlanView plan, int index) => plan.Plan.Layouts.Take(index).Sum(layout => layout.Copies);
}
