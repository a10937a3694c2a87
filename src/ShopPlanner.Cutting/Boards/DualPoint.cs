namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// A feasible point of the dual, in whole numbers of 1/<paramref name="Scale"/> cost unit: no pattern of kind k is worth more than
/// cost + surcharge of k, and no value exceeds the shortage where a piece may stay unmet.
/// </summary>
/// <param name="Values">Of one piece of each item.</param>
/// <param name="Surcharges">Of each kind of stock; zero where it is unlimited.</param>
/// <param name="Scale">Parts of the cost unit.</param>
/// <param name="Bound">Σ value·demand − Σ surcharge·limit.</param>
internal sealed record DualPoint(long[] Values, long[] Surcharges, long Scale, Int128 Bound)
{
    /// <summary>The bound on the total, rounded up to the cost unit.</summary>
    public long Total => Bound <= 0 ? 0 : (long)((Bound + Scale - 1) / Scale);

    /// <summary>A point from values and from the most that any pattern of each kind is worth; null where unlimited stock is
    /// exceeded.</summary>
    public static DualPoint? Of(CuttingModel model, long[] values, long[] most, long scale)
    {
        var surcharges = new long[most.Length];
        Int128 bound = 0;
        for (var item = 0; item < values.Length; item++) bound += (Int128)values[item] * model.Demands[item];
        for (var kind = 0; kind < most.Length; kind++)
        {
            surcharges[kind] = Math.Max(0, most[kind] - (model.Kinds[kind].Cost * scale));
            if (surcharges[kind] > 0 && model.Kinds[kind].Unlimited) return null;
            bound -= (Int128)surcharges[kind] * model.Kinds[kind].Limit;
        }

        return new(values, surcharges, scale, bound);
    }
}
