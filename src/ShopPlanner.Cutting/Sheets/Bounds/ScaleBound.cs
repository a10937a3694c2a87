using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>One inequality every complete plan keeps: the stocks' measures, times how often each is cut, reach the
/// items'.</summary>
/// <param name="Wanted">Measure of all items.</param>
/// <param name="PerStock">Measure of one stock of each kind.</param>
internal sealed record CoverRow(Int128 Wanted, Int128[] PerStock);

/// <summary>
/// Bounds from pairs of side measures, a turning item counted the way that counts less. Tried in floating point, the best ones
/// are worked out again exactly.
/// </summary>
internal sealed class ScaleBound
{
    private const int MostMarks = 60;

    // Fewer marks are taken where every pair of measures, over all types, would be more steps than this.
    private const double MostWork = 8e6;

    private const int KeptRows = 12;

    private readonly SheetModel model;
    private readonly int[] demand;
    private readonly long[] sidesX;
    private readonly long[] sidesY;
    private readonly List<SideFunction> alongX;
    private readonly List<SideFunction> alongY;

    public ScaleBound(SheetModel model)
    {
        this.model = model;
        demand = [.. model.Types.Select(t => t.Demand)];
        var types = model.Types.Where(t => t.Demand > 0).ToList();
        var x = ReachableSides.Lengths(types, true);
        var y = ReachableSides.Lengths(types, false);
        sidesX = [.. model.Stocks.Select(s => ReachableSides.Of(s.W, x))];
        sidesY = [.. model.Stocks.Select(s => ReachableSides.Of(s.H, y))];
        var marks = Math.Clamp((int)Math.Sqrt(MostWork / model.Types.Length) / 2, 1, MostMarks);
        alongX = SideFunctions.For(Math.Max(1, sidesX.Max()), x.Select(l => l.Length), marks);
        alongY = SideFunctions.For(Math.Max(1, sidesY.Max()), y.Select(l => l.Length), marks);
    }

    /// <summary>The strongest inequalities, the plain area among them.</summary>
    public List<CoverRow> Rows()
    {
        var valuesX = alongX.Select(f => new Values(f, model.Types, sidesX)).ToList();
        var valuesY = alongY.Select(f => new Values(f, model.Types, sidesY)).ToList();
        var pairs = valuesX.SelectMany(x => valuesY.Select(y => (X: x, Y: y, Ratio: Ratio(x, y))));
        return
        [
            .. pairs.OrderByDescending(p => p.Ratio).Take(KeptRows).Select(p => Exact(p.X, p.Y)),
            Exact(valuesX[0], valuesY[0]),
        ];
    }

    // Least cost the inequality forces when stock could be cut in fractions.
    private double Ratio(Values x, Values y)
    {
        var wanted = 0.0;
        for (var t = 0; t < demand.Length; t++)
        {
            if (demand[t] == 0)
                continue;
            var value = (double)x.OfW[t] * y.OfH[t];
            wanted += demand[t] * (model.Types[t].CanTurn ? Math.Min(value, (double)x.OfH[t] * y.OfW[t]) : value);
        }
        return CoverCost.Fractional(model.Stocks, wanted, s => (double)x.OfStock[s] * y.OfStock[s]);
    }

    private CoverRow Exact(Values x, Values y)
    {
        Int128 wanted = 0;
        for (var t = 0; t < demand.Length; t++)
        {
            var value = (Int128)x.OfW[t] * y.OfH[t];
            wanted += demand[t] * (model.Types[t].CanTurn ? Int128.Min(value, (Int128)x.OfH[t] * y.OfW[t]) : value);
        }
        return new(wanted, [.. model.Stocks.Select(s => (Int128)x.OfStock[s.Index] * y.OfStock[s.Index])]);
    }

    // A measure's figures for both sides of every type (where they fit) and one side of every stock.
    private sealed class Values(SideFunction function, ItemType[] types, long[] stocks)
    {
        public long[] OfW { get; } = [.. types.Select(t => Of(function, t.W))];

        public long[] OfH { get; } = [.. types.Select(t => Of(function, t.H))];

        public long[] OfStock { get; } = [.. stocks.Select(s => function.Of(s))];

        // A side longer than any stock never lies along this axis; no turn of its item counts less than it.
        private static long Of(SideFunction function, long x) => x <= function.Side ? function.Of(x) : 0;
    }
}
