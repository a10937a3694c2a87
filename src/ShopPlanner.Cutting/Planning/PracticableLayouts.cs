using ShopPlanner.Cutting.Clearing;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sequence;
using ShopPlanner.Cutting.Sheets.Writing;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>
/// Layouts that can be cut in this shop: parts clear of bad places, as many first cuts by the store as are needed, panels that go
/// into the car, and an order of cuts at home within the reach of fence and blade. Sides are ticks and carry one kerf. Where the
/// stock as bought can be carried and cut at home, the store makes no cut, since its tolerance costs wood.
/// </summary>
internal sealed class PracticableLayouts : ILayoutRule
{
    private readonly Job job;
    private readonly SheetStock[] models;
    private readonly WithinReach reach;
    private readonly WoodWriter wood;
    private readonly LayoutWriter[] writers;
    private readonly ClearWriter?[] clear;

    public PracticableLayouts(Job job)
    {
        this.job = job;
        var measure = new SheetMeasure(job, 1, 1);
        models = [.. job.Stock.Select(measure.Of)];
        reach = new(SawReach.Of(job.Saw), job.Kerf);
        wood = new(job, 1, 1);
        var highest = job.Saw.LongestCrosscut is { } longest ? longest.Ticks + job.Kerf : long.MaxValue;
        writers = [.. models.Select(model => new LayoutWriter(model, highest))];
        clear =
        [
            .. job.Stock.Select((stock, i) => stock.BadPlaces.IsEmpty ? null : ClearWood.Writer(job, stock, models[i], highest)),
        ];
    }

    public bool Binds(int stock) => job.Binds(job.Stock[stock]) || clear[stock] is not null;

    public bool Allows(int stock, LayoutNode root) =>
        clear[stock] is { } writer && !job.Binds(job.Stock[stock]) ? writer.CanWrite(root) : Write(stock, root) is not null;

    public LayoutNode? Write(int stock, LayoutNode root)
    {
        if (clear[stock] is { } writer)
            return job.GoesHome(job.Stock[stock]) && writer.Write(root) is { } layout ? Cuttable(stock, layout) : null;
        if (job.GoesHome(job.Stock[stock]) && Cuttable(stock, writers[stock].Write(root)) is { } whole)
            return whole;
        if (job.Stock[stock] is { Offcut: true } or { SoldUncut: true } || job.Store is not { } store)
            return null;
        for (var cuts = 1; cuts <= store.Most; cuts++)
            if (Ways(stock, root, cuts) is { } layout)
                return layout;
        return null;
    }

    /// <summary>True when one piece of the part can be cut from the stock.</summary>
    public bool CanCut(CutPart part, int stock)
    {
        var item = new SheetMeasure(job, 1, 1).Of(part);
        return CanCut(item.Dx, item.Dy, stock) || (item.CanTurn && CanCut(item.Dy, item.Dx, stock));
    }

    private bool CanCut(long dx, long dy, int stock) =>
        dx <= models[stock].Dx && dy <= models[stock].Dy && Write(stock, LayoutNode.Piece(0, false, 0, 0, dx, dy)) is not null;

    // Crosscuts or rips by the store, whichever leaves more of worth. A store does not rip boards.
    private LayoutNode? Ways(int stock, LayoutNode root, int cuts)
    {
        var across = Panels(stock, root, alongX: true, cuts);
        var along = job.IsBoard ? null : Panels(stock, root, alongX: false, cuts);
        if (across is null || along is null)
            return across ?? along;
        return LeftoverValue.OfAll(models[stock], across) >= LeftoverValue.OfAll(models[stock], along) ? across : along;
    }

    private LayoutNode? Panels(int stock, LayoutNode root, bool alongX, int cuts)
    {
        var sides = new StoreSides(job, job.Stock[stock], alongX);
        var rows = Rows(root, alongX);
        if (cuts > sides.MostCuts(rows.Count) || new StorePanels(sides, cuts).Share(rows) is not { } panels)
            return null;
        var nodes = panels.Select(panel => Node(panel, alongX, stock));
        return Cuttable(stock, new(0, 0, models[stock].Dx, models[stock].Dy, null, false, alongX, [.. nodes]) { ByStore = true });
    }

    private static List<LayoutNode> Rows(LayoutNode root, bool alongX) =>
        root.Item is null && root.AlongX == alongX ? [.. root.Children] : [root];

    private LayoutNode Node(StorePanel panel, bool alongX, int stock)
    {
        var (x, y, dx, dy) = alongX
            ? (panel.From - job.StartX(job.Stock[stock]), 0L, panel.To - panel.From + job.Kerf, models[stock].Dy)
            : (0L, panel.From - job.StartY(job.Stock[stock]), models[stock].Dx, panel.To - panel.From + job.Kerf);
        return panel.Rows.Count == 0
            ? LayoutNode.Remnant(x, y, dx, dy)
            : writers[stock].Fill(Together(panel.Rows, alongX), x, y, dx, dy);
    }

    private static LayoutNode Together(List<LayoutNode> rows, bool alongX) =>
        rows.Count == 1 ? rows[0] : LayoutNode.Row(alongX, [.. rows]);

    private LayoutNode? Cuttable(int stock, LayoutNode root)
    {
        var bought = job.Stock[stock];
        var whole = new PieceInHand("", wood.Write(root, bought), 0, 0, bought.Length.Ticks, bought.Width.Ticks);
        return reach.CanFree(whole) ? root : null;
    }
}
