namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Bounds that hold whatever the floating-point solver did. Any values w ≥ 0 of the items give one: when no pattern of kind k is
/// worth more than z_k, every plan costs at least Σ w·demand − Σ limit_k·max(0, z_k − cost_k). Unlimited stock allows no excess, so
/// the values are first scaled down until none has any (Farley, Operations Research 38, 1990). The values are whole numbers, the
/// knapsacks exact and the sums 128 bits wide: nothing is rounded but the result, upwards, since totals are whole numbers.
/// </summary>
internal static class SafeBound
{
    /// <summary>The bound on the total, in the model's cost unit, from values in 1/scale of that unit and the most that a pattern
    /// of each kind is worth.</summary>
    public static long Of(CuttingModel model, long[] values, long[] most, long scale)
    {
        var (p, q) = Shrink(model, most, scale);
        Int128 sum = 0;
        for (var item = 0; item < values.Length; item++) sum += (Int128)values[item] * model.Demands[item];
        sum *= p;
        for (var kind = 0; kind < most.Length; kind++)
        {
            if (model.Kinds[kind].Unlimited) continue;
            var excess = ((Int128)p * most[kind]) - ((Int128)q * model.Kinds[kind].Cost * scale);
            if (excess > 0) sum -= excess * model.Kinds[kind].Limit;
        }

        return sum <= 0 ? 0 : (long)RoundUp(sum, (Int128)q * scale);
    }

    /// <summary>Whole-number values just below the duals, and their scale, small enough for exact knapsacks.</summary>
    public static (long[] Values, long Scale) Whole(CuttingModel model, double[] duals)
    {
        var capped = duals.Select((dual, i) => model.AlwaysFits(i) ? dual : Math.Min(dual, model.Shortage)).ToArray();
        var rate = capped.Select((dual, i) => dual / model.Sizes[i]).DefaultIfEmpty(0).Max();
        var largest = Math.Max(rate * model.Longest, capped.Select((dual, i) => dual * model.Demands[i] / 1024).Sum());
        largest = Math.Max(largest, model.Kinds.Select(kind => (double)kind.Cost).DefaultIfEmpty(1).Max());
        var scale = 1L << Math.Clamp((int)Math.Floor(50 - Math.Log2(Math.Max(largest, 1e-9))), 0, 40);
        return ([.. capped.Select(dual => (long)Math.Floor(dual * scale))], scale);
    }

    private static (long P, long Q) Shrink(CuttingModel model, long[] most, long scale)
    {
        var (p, q) = (1L, 1L);
        for (var kind = 0; kind < most.Length; kind++)
        {
            var cost = model.Kinds[kind].Cost * scale;
            if (!model.Kinds[kind].Unlimited || most[kind] <= cost) continue;
            if ((Int128)cost * q < (Int128)p * most[kind]) (p, q) = (cost, most[kind]);
        }

        return (p, q);
    }

    private static Int128 RoundUp(Int128 a, Int128 b) => (a + b - 1) / b;
}
