using ShopPlanner.Cutting.Sheets.Model;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>A way a type may lie: its two sides, as points of the axes.</summary>
internal readonly record struct Orientation(int Type, int X, int Y);

/// <summary>The rectangles that the knapsack has to value; where they are too many, lengths are measured coarsely.</summary>
internal sealed class CutGrid
{
    private const int MostPoints = 2000;

    // How finely coarse rules are tried.
    private static readonly int[] Marks = [1200, 1000, 820, 680, 560, 440, 340, 260, 200, 150];

    private CutGrid(SheetModel model, CoarseRule ruleX, CoarseRule ruleY, CutPoints x, CutPoints y, List<Orientation> measured)
    {
        (X, Y) = (x, y);
        Stocks = [.. model.Stocks.Select(s => (x.Floor(ruleX.Of(s.W)), y.Floor(ruleY.Of(s.H))))];
        Orientations = [.. measured.Select(l => new Orientation(l.Type, x.Floor(l.X), y.Floor(l.Y)))];
        Area = (double)ruleX.Marks * ruleY.Marks;
        Areas = new double[model.Types.Length];
        foreach (var orientation in measured.OrderByDescending(l => (double)l.X * l.Y))
            Areas[orientation.Type] = (double)orientation.X * orientation.Y;
        IsExact = ruleX.Marks == ruleX.Side && ruleY.Marks == ruleY.Side;
    }

    public CutPoints X { get; }

    public CutPoints Y { get; }

    /// <summary>False when lengths are measured coarsely.</summary>
    public bool IsExact { get; }

    /// <summary>Each stock's sides, as points.</summary>
    public (int X, int Y)[] Stocks { get; }

    public Orientation[] Orientations { get; }

    /// <summary>No layout's types measure more than this together.</summary>
    public double Area { get; }

    /// <summary>Least measure of each type; zero for one not wanted or too small to be measured.</summary>
    public double[] Areas { get; }

    /// <summary>Steps of valuing every rectangle once.</summary>
    public long Work => Steps(X, Y);

    /// <summary>The finest grid for which valuing takes no more than so many steps; null when there is none. Coarse rules have to
    /// be quicker, since they bound less well.</summary>
    public static CutGrid? Of(SheetModel model, long mostWork)
    {
        var (w, h) = (model.Stocks.Max(s => s.W), model.Stocks.Max(s => s.H));
        var exact = Make(model, CoarseRule.None(w), CoarseRule.None(h), mostWork);
        if (exact is not null)
            return exact;
        var (x, y) = (CoarseRule.Lengths(model, true), CoarseRule.Lengths(model, false));
        return Marks
            .Select(m => Make(model, CoarseRule.Best(w, m, x), CoarseRule.Best(h, m, y), mostWork / 3))
            .FirstOrDefault(grid => grid is not null);
    }

    private static CutGrid? Make(SheetModel model, CoarseRule ruleX, CoarseRule ruleY, long mostWork)
    {
        var orientations = model.Types.SelectMany((t, i) => Ways(t, i, ruleX, ruleY)).ToList();
        if (Unmeasured(orientations) is { Count: > 0 } small)
            orientations.RemoveAll(l => small.Contains(l.Type));
        if (orientations.Count == 0)
            return null;
        var x = CutPoints.Of(ruleX.Marks, Lengths(model, orientations, l => l.X), MostPoints);
        var y = CutPoints.Of(ruleY.Marks, Lengths(model, orientations, l => l.Y), MostPoints);
        return x is null || y is null || Steps(x, y) > mostWork ? null : new(model, ruleX, ruleY, x, y, orientations);
    }

    private static HashSet<int> Unmeasured(List<Orientation> orientations) =>
        [.. orientations.Where(l => l.X == 0 || l.Y == 0).Select(l => l.Type)];

    private static IEnumerable<Orientation> Ways(ItemType type, int index, CoarseRule x, CoarseRule y)
    {
        if (type.Demand == 0)
            yield break;
        if (type.W <= x.Side && type.H <= y.Side)
            yield return new(index, x.Of(type.W), y.Of(type.H));
        if (type.CanTurn && type.H <= x.Side && type.W <= y.Side)
            yield return new(index, x.Of(type.H), y.Of(type.W));
    }

    private static IEnumerable<(int Length, int Count)> Lengths(
        SheetModel model,
        List<Orientation> orientations,
        Func<Orientation, int> side
    ) => orientations.GroupBy(side).Select(g => (g.Key, g.Sum(l => model.Types[l.Type].Demand)));

    // Cuts across x go eight at a time, those across y where all lengths are points nearly so.
    private static long Steps(CutPoints x, CutPoints y) =>
        (x.Splits * ((y.Count / 8) + 1)) + ((long)x.Count * (y.IsDense ? (y.Splits / 4) + (4 * y.Count) : y.Splits));
}
