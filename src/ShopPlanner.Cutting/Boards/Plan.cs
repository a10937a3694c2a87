namespace ShopPlanner.Cutting.Boards;

/// <summary>A whole plan: patterns with how often each is cut. No pattern twice.</summary>
internal sealed class Plan
{
    private Plan(CuttingModel model, (Pattern Pattern, int Times)[] cuts, int[] unmet)
    {
        Cuts = cuts;
        Unmet = unmet;
        Cost = cuts.Sum(cut => cut.Times * model.Kinds[cut.Pattern.Kind].Cost);
        Total = Cost + (unmet.Sum(pieces => (long)pieces) * model.Shortage);
    }

    public (Pattern Pattern, int Times)[] Cuts { get; }

    /// <summary>Pieces of each item not placed.</summary>
    public int[] Unmet { get; }

    /// <summary>Of the stock, in the model's unit.</summary>
    public long Cost { get; }

    /// <summary>Cost and the shortage of every piece not placed.</summary>
    public long Total { get; }

    /// <summary>
    /// The plan that cuts these, in this order: pieces beyond the demand are left out, patterns that then have none are
    /// dropped, and every pattern goes to the cheapest stock that takes it and is still to be had.
    /// </summary>
    public static Plan Of(CuttingModel model, IEnumerable<(Pattern Pattern, int Times)> cuts)
    {
        var wanted = (int[])model.Demands.Clone();
        return new Plan(model, Merge(Downsizing.Apply(model, Trimmed(cuts, wanted))), wanted);
    }

    /// <summary>The same cuts without pieces that are not wanted; lowers what is wanted by what they hold.</summary>
    public static List<(Pattern Pattern, int Times)> Trimmed(IEnumerable<(Pattern Pattern, int Times)> cuts, int[] wanted)
    {
        var trimmed = new List<(Pattern Pattern, int Times)>();
        foreach (var (pattern, times) in cuts)
            Trim(pattern, times, wanted, trimmed);
        return trimmed;
    }

    private static void Trim(Pattern pattern, int times, int[] wanted, List<(Pattern Pattern, int Times)> to)
    {
        while (times > 0)
        {
            var fit = new Pattern(
                pattern.Kind,
                [
                    .. pattern
                        .Pieces.Select(piece => piece with { Count = Math.Min(piece.Count, wanted[piece.Item]) })
                        .Where(piece => piece.Count > 0),
                ]
            );
            if (fit.Pieces.Length == 0)
                return;
            var now = Math.Min(times, fit.TimesWithin(wanted));
            foreach (var piece in fit.Pieces)
                wanted[piece.Item] -= piece.Count * now;
            to.Add((fit, now));
            times -= now;
        }
    }

    private static (Pattern, int)[] Merge(IEnumerable<(Pattern Pattern, int Times)> cuts) =>
        [.. cuts.GroupBy(cut => cut.Pattern).Select(alike => (alike.Key, alike.Sum(cut => cut.Times)))];
}
