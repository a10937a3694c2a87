using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>The limits of the shop, judged cut by cut: what the store cuts, what the car takes, how far the saw at home
/// reaches.</summary>
internal sealed class LimitCheck
{
    private readonly CutRequest request;
    private readonly CutStock stock;
    private readonly bool sheet;
    private readonly List<Box> panels = [];
    private readonly HashSet<long> edges = [];
    private CutKind? storeKind;
    private int storeCuts;
    private bool atHome;

    public LimitCheck(CutRequest request, CutStock stock, bool sheet)
    {
        (this.request, this.stock, this.sheet) = (request, stock, sheet);
        panels.Add(new(0, 0, stock.Length.Ticks, stock.Width.Ticks));
    }

    private long Tolerance => request.Store?.Tolerance.Ticks ?? 0;

    /// <summary>How much a squaring cut at 0 takes off an edge that the store left rough; null for another edge.</summary>
    public long? Skim(CutKind kind, long edge) =>
        storeKind == kind && edges.Contains(edge) ? Math.Min(request.Saw.Kerf.Ticks, Tolerance) : null;

    /// <summary>Takes a cut in, and gives what is wrong with it.</summary>
    public IEnumerable<Fault> Cut(Cut cut, Box piece, Box first, Box rest, string where) =>
        cut.ByStore ? AtStore(cut, piece, first, rest, where) : AtHome(cut, piece, where);

    /// <summary>What is wrong with the panels and with what lies in them, once all cuts are made.</summary>
    public IEnumerable<Fault> AtEnd(Layout layout, string where)
    {
        foreach (var panel in panels.Where(panel => !GoesIntoCar(panel)))
        {
            var size = $"{Side(panel.Right - panel.Left)} × {Side(panel.Top - panel.Bottom)}";
            yield return Fault.Of(where, layout.Stock, $"has a piece to carry home of {size}, more than the car takes");
        }

        foreach (var piece in layout.Pieces.Where(piece => !LiesInPanel(Box.Of(piece))))
            yield return Fault.Of(where, piece.Part, "lies across a cut by the store, or in the wood left on for its tolerance");
    }

    private IEnumerable<Fault> AtStore(Cut cut, Box piece, Box first, Box rest, string where)
    {
        var kind = storeKind ??= cut.Kind;
        if (stock.Offcut)
            yield return Fault.Of(where, "store", "makes a cut in what is at home already");
        if (request.Store is null)
            yield return Fault.Of(where, "store", "makes no cuts by this request");
        if (stock.SoldUncut)
            yield return Fault.Of(where, stock.Id, "is sold without first cuts");
        if (++storeCuts > (request.Store?.Most ?? int.MaxValue))
            yield return Fault.Of(where, $"{storeCuts}", $"are more cuts by the store than {request.Store!.Most}");
        if (atHome)
            yield return Fault.Of(where, "store", "makes a cut after one at home");
        if (cut.Kind != kind)
            yield return Fault.Of(where, $"{cut.Kind}", "is not parallel to the other cuts by the store");
        if (!panels.Remove(piece))
            yield return Fault.Of(where, cut.Piece, "isn't a panel of the whole stock");
        panels.Add(first);
        edges.Add(cut.Kind == CutKind.Crosscut ? first.Right : first.Top);
        if (rest.Left >= rest.Right || rest.Bottom >= rest.Top)
            yield break;
        panels.Add(rest);
        edges.Add(cut.Kind == CutKind.Crosscut ? rest.Left : rest.Bottom);
    }

    private IEnumerable<Fault> AtHome(Cut cut, Box piece, string where)
    {
        atHome = true;
        var across = piece.Top - piece.Bottom;
        if (cut.Kind == CutKind.Crosscut && across > request.Saw.LongestCrosscut?.Ticks)
            yield return Fault.Of(where, Side(across), $"is a longer crosscut than the saw makes, {request.Saw.LongestCrosscut}");
        var narrower = Math.Min(cut.At.Ticks, across - cut.At.Ticks - request.Saw.Kerf.Ticks);
        if (cut.Kind == CutKind.Rip && narrower > request.Saw.WidestRip?.Ticks)
            yield return Fault.Of(where, Side(narrower), $"is a wider rip than the saw makes, {request.Saw.WidestRip}");
    }

    private bool GoesIntoCar(Box panel)
    {
        if (stock.Offcut || request.Carry is not { } car)
            return true;
        var (dx, dy) = (panel.Right - panel.Left, panel.Top - panel.Bottom);
        return sheet ? Math.Max(dx, dy) <= car.Longest.Ticks && Math.Min(dx, dy) <= car.Widest.Ticks : dx <= car.Longest.Ticks;
    }

    private bool LiesInPanel(Box piece) => panels.Any(panel => Trimmed(panel).Contains(piece));

    private Box Trimmed(Box panel)
    {
        long Off(CutKind kind, long edge) => storeKind == kind && edges.Contains(edge) ? Tolerance : 0;
        return new(
            panel.Left + Off(CutKind.Crosscut, panel.Left),
            panel.Bottom + Off(CutKind.Rip, panel.Bottom),
            panel.Right - Off(CutKind.Crosscut, panel.Right),
            panel.Top - Off(CutKind.Rip, panel.Top)
        );
    }

    private static string Side(long ticks) => $"{Length.FromTicks(ticks)}";
}
