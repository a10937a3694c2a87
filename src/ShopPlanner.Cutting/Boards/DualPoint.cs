namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// A feasible point of the dual, in whole numbers of 1/<paramref name="Scale"/> cost unit: no pattern of kind k is worth more
/// than cost + surcharge of k, and no value exceeds the shortage where a piece may stay unmet. Such a point bounds every plan's
/// total whatever a floating-point solver did: the values are whole, the knapsacks exact, the sums 128 bits wide, and nothing is
/// rounded but the result, upwards, since totals are whole numbers.
/// </summary>
/// <param name="Values">Of one piece of each item.</param>
/// <param name="Surcharges">Of each kind of stock; zero where it is unlimited.</param>
/// <param name="Scale">Parts of the cost unit.</param>
/// <param name="Bound">Σ value·demand − Σ surcharge·limit.</param>
internal sealed record DualPoint(long[] Values, long[] Surcharges, long Scale, Int128 Bound)
{
    /// <summary>The bound on the total, rounded up to the cost unit.</summary>
    public long Total => Bound <= 0 ? 0 : (long)((Bound + Scale - 1) / Scale);

    /// <summary>True when the bound is higher than the other's.</summary>
    public bool Beats(DualPoint? other) => other is null || Bound * other.Scale > other.Bound * Scale;

    /// <summary>Whole-number values just below floating-point duals, and their scale, small enough for exact knapsacks.</summary>
    public static (long[] Values, long Scale) Whole(CuttingModel model, double[] duals)
    {
        var capped = duals.Select((dual, i) => model.AlwaysFits(i) ? dual : Math.Min(dual, model.Shortage)).ToArray();
        var rate = capped.Select((dual, i) => dual / model.Sizes[i]).DefaultIfEmpty(0).Max();
        var largest = Math.Max(rate * model.Longest, capped.Select((dual, i) => dual * model.Demands[i] / 1024).Sum());
        largest = Math.Max(largest, model.Kinds.Select(kind => (double)kind.Cost).DefaultIfEmpty(1).Max());
        var scale = 1L << Math.Clamp((int)Math.Floor(50 - Math.Log2(Math.Max(largest, 1e-9))), 0, 40);
        return ([.. capped.Select(dual => (long)Math.Floor(dual * scale))], scale);
    }

    /// <summary>Items valued by their size, in the finest measure that leaves room for the sums.</summary>
    public static DualPoint BySize(CuttingModel model)
    {
        var dearest = model.Kinds.Select(kind => (double)kind.Cost / kind.Capacity).DefaultIfEmpty(0).Max();
        var (values, scale) = Whole(model, [.. model.Sizes.Select(size => size * dearest)]);
        return Of(model, values, [.. model.Kinds.Select(kind => (long)Math.Ceiling(kind.Capacity * dearest * scale) + 1)], scale);
    }

    /// <summary>
    /// A point from any values and from the most that a pattern of each kind is worth. Where that exceeds the cost of unlimited
    /// stock, the values are scaled down until it does not (Farley, Operations Research 38, 1990).
    /// </summary>
    public static DualPoint Of(CuttingModel model, long[] values, long[] most, long scale)
    {
        var (p, q) = Shrink(model, most, scale);
        var shrunk = values.Select(value => (long)((Int128)value * p / q)).ToArray();
        var surcharges = most.Select((worth, kind) => Surcharge(model.Kinds[kind], (Int128)worth * p / q, scale)).ToArray();
        Int128 bound = 0;
        for (var item = 0; item < shrunk.Length; item++)
            bound += (Int128)shrunk[item] * model.Demands[item];
        for (var kind = 0; kind < most.Length; kind++)
            bound -= (Int128)surcharges[kind] * model.Kinds[kind].Limit;
        return new(shrunk, surcharges, scale, bound);
    }

    // Values were rounded down, so the worth of a pattern, a whole number, is at most the scaled worth rounded down.
    private static long Surcharge(StockKind kind, Int128 worth, long scale) =>
        kind.Unlimited ? 0 : (long)Int128.Max(0, worth - (kind.Cost * scale));

    private static (long P, long Q) Shrink(CuttingModel model, long[] most, long scale)
    {
        var (p, q) = (1L, 1L);
        for (var kind = 0; kind < most.Length; kind++)
        {
            var cost = model.Kinds[kind].Cost * scale;
            if (!model.Kinds[kind].Unlimited || most[kind] <= cost)
                continue;
            if ((Int128)cost * q < (Int128)p * most[kind])
                (p, q) = (cost, most[kind]);
        }

        return (p, q);
    }
}
