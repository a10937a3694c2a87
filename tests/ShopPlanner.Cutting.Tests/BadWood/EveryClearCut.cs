using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.BadWood;

/// <summary>
/// The least cost of a tiny request with bad places, by trying every cut at every whole millimetre, the kerf lost as sawdust where it
/// falls, and every way of sharing the pieces between the two sides. Slow and simple on purpose: nothing of the planner is used.
/// </summary>
internal sealed class EveryClearCut
{
    private readonly CutRequest request;
    private readonly int kerf;
    private readonly CutPart[] pieces;
    private readonly Dictionary<(int Stock, int X, int Y, int Dx, int Dy, int Set), bool> known = [];

    private EveryClearCut(CutRequest request)
    {
        this.request = request;
        kerf = Whole(request.Saw.Kerf);
        pieces = [.. request.Parts.SelectMany(part => Enumerable.Repeat(part, part.Quantity))];
    }

    /// <summary>What the cheapest plan for all pieces of a request of one material costs; null when they cannot all be
    /// placed.</summary>
    public static Money? Least(CutRequest request)
    {
        var search = new EveryClearCut(request);
        return search.Least(
            (1 << search.pieces.Length) - 1,
            [.. request.Stock.Select(stock => stock.Quantity ?? search.pieces.Length)]
        );
    }

    private Money? Least(int wanted, int[] left)
    {
        if (wanted == 0)
            return Money.Zero;
        Money? best = null;
        for (var s = 0; s < left.Length; s++)
        {
            if (left[s] == 0)
                continue;
            left[s]--;
            for (var set = wanted; set > 0; set = (set - 1) & wanted)
                if (
                    (set & wanted & -wanted) != 0
                    && IsCutFrom(s, set)
                    && Least(wanted & ~set, left) + request.Stock[s].Price is { } cost
                    && !(best <= cost)
                )
                    best = cost;
            left[s]++;
        }

        return best;
    }

    private bool IsCutFrom(int s, int set)
    {
        var stock = request.Stock[s];
        var board = request.Materials[0].Form == StockForm.Board;
        var trim = Whole(board ? request.Saw.BoardEndTrim : request.Saw.SheetEdgeTrim);
        var usual =
            stock.Offcut ? StockEdges.None
            : board ? StockEdges.Near
            : StockEdges.All;
        int Off(StockEdges edge) => (stock.Untrimmed ?? usual).HasFlag(edge) ? trim : 0;
        var (x, y) = (Off(StockEdges.Near), Off(StockEdges.Front));
        return IsCutFrom(
            s,
            x,
            y,
            Whole(stock.Length) - x - Off(StockEdges.Far),
            Whole(stock.Width) - y - Off(StockEdges.Back),
            set
        );
    }

    private bool IsCutFrom(int stock, int x, int y, int dx, int dy, int set)
    {
        if (dx <= 0 || dy <= 0)
            return false;
        if ((set & (set - 1)) == 0)
            return Holds(stock, x, y, dx, dy, pieces[int.TrailingZeroCount(set)]);
        var key = (stock, x, y, dx, dy, set);
        if (!known.TryGetValue(key, out var answer))
            known.Add(key, answer = TryCuts(stock, x, y, dx, dy, set));
        return answer;
    }

    private bool TryCuts(int stock, int x, int y, int dx, int dy, int set)
    {
        for (var part = (set - 1) & set; part > 0; part = (part - 1) & set)
        {
            for (var at = 1; at + kerf < dx; at++)
                if (IsCutFrom(stock, x, y, at, dy, part) && IsCutFrom(stock, x + at + kerf, y, dx - at - kerf, dy, set & ~part))
                    return true;
            for (var at = 1; at + kerf < dy; at++)
                if (IsCutFrom(stock, x, y, dx, at, part) && IsCutFrom(stock, x, y + at + kerf, dx, dy - at - kerf, set & ~part))
                    return true;
        }

        return false;
    }

    // A single piece can be cut free wherever it lies.
    private bool Holds(int stock, int x, int y, int dx, int dy, CutPart part)
    {
        var (length, width) = (Whole(part.Length), Whole(part.Width));
        return Holds(stock, x, y, dx, dy, length, width)
            || (part.Grain == Grain.Any && Holds(stock, x, y, dx, dy, width, length));
    }

    private bool Holds(int stock, int x, int y, int dx, int dy, int length, int width)
    {
        for (var px = x; px + length <= x + dx; px++)
        for (var py = y; py + width <= y + dy; py++)
            if (request.Stock[stock].BadPlaces.All(place => !place.Touches(Mm(px), Mm(py), Mm(length), Mm(width))))
                return true;
        return false;
    }

    private static int Whole(Length length) => (int)length.ToMillimetres();

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}
