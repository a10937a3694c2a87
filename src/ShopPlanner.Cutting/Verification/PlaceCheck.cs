using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>The bad places and raw edges of one stock, read from the request alone.</summary>
internal sealed class PlaceCheck
{
    private readonly CutStock stock;
    private readonly long kerf;
    private readonly long trim;
    private readonly StockEdges raw;
    private readonly List<Box> bad;

    public PlaceCheck(CutRequest request, CutStock stock, bool sheet)
    {
        this.stock = stock;
        kerf = request.Saw.Kerf.Ticks;
        trim = (sheet ? request.Saw.SheetEdgeTrim : request.Saw.BoardEndTrim).Ticks;
        var usual = sheet ? StockEdges.All : StockEdges.Near;
        raw = stock.Untrimmed ?? (stock.Offcut ? StockEdges.None : usual);
        bad = [.. stock.BadPlaces.Select(place => new Box(place.X.Ticks, place.Y.Ticks, place.EndX.Ticks, place.EndY.Ticks))];
        // Which end of a new board is squared is open where the request does not say: another check sees that one is.
        var known = stock.Untrimmed ?? (sheet ? raw : StockEdges.None);
        Usable = new(
            known.HasFlag(StockEdges.Near) ? trim : 0,
            known.HasFlag(StockEdges.Front) ? trim : 0,
            stock.Length.Ticks - (known.HasFlag(StockEdges.Far) ? trim : 0),
            stock.Width.Ticks - (known.HasFlag(StockEdges.Back) ? trim : 0)
        );
    }

    /// <summary>What lies within the trims.</summary>
    public Box Usable { get; }

    /// <summary>What a cut at 0 takes off the stock's own end: the blade hangs over it and takes the trim, where that is
    /// less than a kerf; where a bad place begins within a kerf of the end, a whole kerf.</summary>
    public long SkimX => Skim(StockEdges.Near, bad.Exists(box => box.Left < kerf));

    /// <summary>As <see cref="SkimX"/>, of the long edge.</summary>
    public long SkimY => Skim(StockEdges.Front, bad.Exists(box => box.Bottom < kerf));

    /// <summary>True when some wood of the rectangle is bad.</summary>
    public bool IsBad(Box box) => bad.Exists(one => one.Overlaps(box));

    /// <summary>What is wrong with pieces and leftovers.</summary>
    public IEnumerable<Fault> Of(Layout layout, string where)
    {
        for (var i = 0; i < layout.Pieces.Length; i++)
        {
            var box = Box.Of(layout.Pieces[i]);
            if (!Usable.Contains(box))
                yield return Fault.Of($"{where}.pieces[{i}]", layout.Pieces[i].Part, "leaves the usable wood");
            if (IsBad(box))
                yield return Fault.Of($"{where}.pieces[{i}]", layout.Pieces[i].Part, "touches a bad place");
        }

        foreach (var left in layout.Leftovers.Where(left => left.Keep))
        {
            if (!Usable.Contains(Box.Of(left)))
                yield return Fault.Of(where, stock.Id, "has a leftover to keep that reaches into a trim");
            if (IsBad(Box.Of(left)))
                yield return Fault.Of(where, stock.Id, "has a leftover to keep that touches a bad place");
        }
    }

    private long Skim(StockEdges edge, bool isBad) =>
        isBad ? kerf
        : raw.HasFlag(edge) ? Math.Min(kerf, trim)
        : 0;
}
