namespace ShopPlanner.Cutting.Boards;

/// <summary>Patterns for the relaxation to begin with.</summary>
internal static class StartPatterns
{
    /// <summary>Those of the best plan, and for every kind of stock each item by itself.</summary>
    public static IEnumerable<Pattern> For(Search search) =>
        search.Best.Cuts.Select(cut => cut.Pattern).Concat(Alone(search.Model));

    private static IEnumerable<Pattern> Alone(CuttingModel model) =>
        from kind in Enumerable.Range(0, model.Kinds.Length)
        from item in Enumerable.Range(0, model.Count)
        let most = (int)Math.Min(model.Demands[item], model.Kinds[kind].Capacity / model.Sizes[item])
        where most > 0
        from count in new SortedSet<int> { 1, most }
        select new Pattern(kind, [new Piece(item, count)]);
}
