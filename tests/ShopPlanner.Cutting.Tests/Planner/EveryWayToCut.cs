using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// The best plan of a tiny request, cheapest and of equals the one that uses up most of the bin, by trying every cut at every whole millimetre, the kerf lost as sawdust where it falls, and
/// every way of sharing the pieces between the two sides. Slow and simple on purpose: nothing of the planner is used, and no kerf is
/// reckoned into a size.
/// </summary>
internal sealed class EveryWayToCut
{
    private readonly CutRequest request;
    private readonly int kerf;
    private readonly CutPart[] pieces;
    private readonly Dictionary<(int, int, int), bool> known = [];

    private EveryWayToCut(CutRequest request)
    {
        this.request = request;
        kerf = Whole(request.Saw.Kerf);
        pieces = [.. request.Parts.SelectMany(part => Enumerable.Repeat(part, part.Quantity))];
    }

    /// <summary>What the best plan for all pieces of a request of one material comes to; null when they cannot all be placed.</summary>
    public static Worth? Best(CutRequest request)
    {
        var search = new EveryWayToCut(request);
        return search.Best(
            (1 << search.pieces.Length) - 1,
            [.. request.Stock.Select(stock => stock.Quantity ?? search.pieces.Length)]
        );
    }

    private Worth? Best(int wanted, int[] left)
    {
        if (wanted == 0)
            return new(Money.Zero, 0);
        Worth? best = null;
        for (var s = 0; s < left.Length; s++)
        {
            if (left[s] == 0)
                continue;
            left[s]--;
            foreach (var set in Sets(wanted).Where(set => IsCutFrom(request.Stock[s], set)))
            {
                if (Best(wanted & ~set, left) is not { } rest)
                    continue;
                var worth = new Worth(
                    rest.Cost + request.Stock[s].Price,
                    rest.FromBin + (request.Stock[s].Offcut ? Area(set) : 0)
                );
                if (best is null || worth.CompareTo(best.Value) > 0)
                    best = worth;
            }

            left[s]++;
        }

        return best;
    }

    // The first piece still wanted comes from the stock taken next, whichever that is.
    private static IEnumerable<int> Sets(int wanted)
    {
        for (var set = wanted; set > 0; set = (set - 1) & wanted)
            if ((set & wanted & -wanted) != 0)
                yield return set;
    }

    private bool IsCutFrom(CutStock stock, int set)
    {
        var board = request.Materials[0].Form == StockForm.Board;
        var trim = stock.Offcut ? 0 : Whole(board ? request.Saw.BoardEndTrim : request.Saw.SheetEdgeTrim);
        return board
            ? IsCutFrom(Whole(stock.Length) - trim, Whole(stock.Width), set)
            : IsCutFrom(Whole(stock.Length) - (2 * trim), Whole(stock.Width) - (2 * trim), set);
    }

    private bool IsCutFrom(int dx, int dy, int set)
    {
        if (dx <= 0 || dy <= 0)
            return false;
        if ((set & (set - 1)) == 0)
            return Holds(dx, dy, pieces[int.TrailingZeroCount(set)]);
        if (!known.TryGetValue((dx, dy, set), out var answer))
            known.Add((dx, dy, set), answer = TryCuts(dx, dy, set));
        return answer;
    }

    private bool TryCuts(int dx, int dy, int set)
    {
        for (var part = (set - 1) & set; part > 0; part = (part - 1) & set)
        {
            for (var x = 1; x + kerf < dx; x++)
                if (IsCutFrom(x, dy, part) && IsCutFrom(dx - x - kerf, dy, set & ~part))
                    return true;
            for (var y = 1; y + kerf < dy; y++)
                if (IsCutFrom(dx, y, part) && IsCutFrom(dx, dy - y - kerf, set & ~part))
                    return true;
        }

        return false;
    }

    private long Area(int set) =>
        pieces.Where((_, i) => (set & (1 << i)) != 0).Sum(piece => (long)Whole(piece.Length) * Whole(piece.Width));

    private static bool Holds(int dx, int dy, CutPart part)
    {
        var (length, width) = (Whole(part.Length), Whole(part.Width));
        return (length <= dx && width <= dy) || (part.Grain == Grain.Any && width <= dx && length <= dy);
    }

    private static int Whole(Length length) => (int)length.ToMillimetres();

    /// <summary>What a plan comes to.</summary>
    /// <param name="Cost">Less is better.</param>
    /// <param name="FromBin">Area of the pieces that are cut from offcuts, in square millimetres; of equal cost more is better.</param>
    public readonly record struct Worth(Money Cost, long FromBin)
    {
        /// <summary>More than nothing for the better.</summary>
        public int CompareTo(Worth other) =>
            Cost == other.Cost ? FromBin.CompareTo(other.FromBin)
            : Cost < other.Cost ? 1
            : -1;
    }
}
