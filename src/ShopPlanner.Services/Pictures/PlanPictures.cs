using System.Collections.Immutable;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;

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

    /// <summary>All layouts, to be drawn small: each piece carries its marks and, for want of room, its part's letters.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="isCut">Whether all boards and sheets of a layout, by its index, are cut up.</param>
    public static ImmutableArray<ThumbPicture> ForOverview(PlanView plan, Func<int, bool> isCut)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(isCut);
        var marks = new PlanMarks(plan);
        return
        [
            .. Enumerable
                .Range(0, plan.Plan.Layouts.Length)
                .Select(index => new ThumbPicture(
                    Make(
                        plan,
                        index,
                        Title(plan, index, null),
                        piece => (marks.OfAllCopies(index, piece), isCut(index)),
                        _ => CutState.Planned,
                        []
                    ),
                    PlanLayouts.IsBoard(plan, index)
                )),
        ];
    }

    /// <summary>One physical board or sheet at the bench: its own marks, cuts made and the next one.</summary>
    /// <param name="bench">The plan at the bench.</param>
    /// <param name="number">The board's number, from 1.</param>
    public static LayoutPicture ForBench(BenchView bench, int number)
    {
        var (stock, marks) = (bench.Stocks[number - 1], new PlanMarks(bench.Plan));
        var next = stock.Cuts.FirstOrDefault(cut => !cut.Made)?.Cut.N;
        var made = stock.Cuts.Where(cut => cut.Made).Select(cut => cut.Cut.N).ToHashSet();
        var done = PlanLayouts.FreedBy(bench.Plan, stock.Layout, made);
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

    /// <summary>One physical board or sheet for a page that shows by itself how far its cuts have come.</summary>
    /// <param name="bench">The plan at the bench.</param>
    /// <param name="number">The board's number, from 1.</param>
    public static LayoutPicture ForLiveBench(BenchView bench, int number)
    {
        var picture = ForBench(bench, number);
        var layout = bench.Stocks[number - 1].Layout;
        var traced = PlanLayouts.Trace(bench.Plan, layout).ToDictionary(cut => cut.Cut.N);
        var freed = traced
            .Values.SelectMany(cut => PlanLayouts.PartsOf(cut).Select(part => (part, cut.Cut.N)))
            .ToDictionary(one => one.part, one => one.N);
        var placed = bench.Plan.Plan.Layouts[layout].Pieces;
        return picture with
        {
            IsLive = true,
            Pieces =
            [
                .. picture.Pieces.Select(
                    (piece, i) =>
                        piece with
                        {
                            FreedBy = freed.TryGetValue((placed[i].Part, placed[i].X, placed[i].Y), out var n) ? n : null,
                        }
                ),
            ],
            Cuts = [.. picture.Cuts.Select(cut => cut with { InHand = Whole(traced[cut.N]), State = CutState.Planned })],
        };
    }

    private static StockArea Whole(TracedCut cut)
    {
        var last = cut.Second ?? cut.Kerf;
        return new(cut.First.X, cut.First.Y, last.X + last.Dx - cut.First.X, last.Y + last.Dy - cut.First.Y);
    }

    /// <summary>One physical board or sheet with what is left of it, each piece where it lies and with its tag: only the parts
    /// and the cuts that are there.</summary>
    /// <param name="bench">The plan at the bench.</param>
    /// <param name="number">The board's number, from 1.</param>
    /// <param name="left">What is left, as proposed.</param>
    /// <param name="allCutsMade">Whether every cut was made, ticked or not.</param>
    public static LayoutPicture ForLeftovers(BenchView bench, int number, IReadOnlyList<ProposedLeftover> left, bool allCutsMade)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(left);
        var (stock, whole) = (bench.Stocks[number - 1], ForBench(bench, number));
        var made = stock.Cuts.Where(cut => cut.Made || allCutsMade).Select(cut => cut.Cut.N).ToHashSet();
        var done = PlanLayouts.FreedBy(bench.Plan, stock.Layout, made);
        return whole with
        {
            Pieces = [.. whole.Pieces.Where((_, i) => done.Contains(i)).Select(piece => piece with { Done = true })],
            Cuts = [.. whole.Cuts.Where(cut => made.Contains(cut.N)).Select(cut => cut with { State = CutState.Done })],
            Leftovers =
            [
                .. left.Select(one => new LeftoverPicture(
                    LeftoverProposals.AreaOf(bench, stock, one.Left),
                    one.Left.Keep,
                    one.Tag
                )),
            ],
        };
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
        var (layout, stock) = (plan.Plan.Layouts[index], PlanLayouts.StockOf(plan, index));
        var material = PlanLayouts.MaterialOf(plan, stock);
        return new LayoutPicture(
            title,
            plan.UnitOfLayout(index),
            stock.Length,
            stock.Width,
            material.Thickness,
            plan.Stocks[stock.Id].Tint,
            StockPictures.HasGrain(material.Id, material.Form),
            [.. layout.Pieces.Select((piece, i) => Piece(plan, piece, mark(i)))],
            Leftovers(layout, tags),
            StockPictures.Trims(stock, material.Form, plan.Request.Saw),
            [
                .. PlanLayouts
                    .Trace(plan, index)
                    .Select(cut => new CutPicture(cut.Cut.N, cut.Kerf, state(cut.Cut.N), cut.Cut.ByStore)),
            ]
        )
        {
            BadPlaces = StockPictures.Areas(stock.BadPlaces),
        };
    }

    private static PiecePicture Piece(PlanView plan, PlacedPiece piece, (string Mark, bool Done) mark) =>
        new(mark.Mark, plan.Parts[piece.Part].Name, new(piece.X, piece.Y, piece.Dx, piece.Dy), piece.Turned, mark.Done)
        {
            Letters = plan.Parts[piece.Part].Mark,
        };

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

    private static string Title(PlanView plan, int index, int? copy)
    {
        var name = plan.Stocks[plan.Plan.Layouts[index].Stock];
        var number = copy is { } one ? $"{PlanLayouts.Before(plan, index) + one}" : PlanLayouts.Number(plan, index);
        return (name.Tag is { } tag ? $"{tag}: " : "")
            + $"{name.Name}, {number} of {plan.Plan.Layouts.Sum(layout => layout.Copies)}";
    }
}
