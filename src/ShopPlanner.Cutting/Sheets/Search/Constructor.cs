using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>First packings: insertion in several orders, fits and ways of opening stock.</summary>
internal sealed class Constructor(SheetModel model)
{
    private readonly Recreate recreate = new(model, new RandomSource(1));

    /// <summary>The best of all ways, as far as <paramref name="stop"/> lets it go; the first is always tried.</summary>
    public Packing Run(Func<bool> stop, Action<Packing> tell)
    {
        var best = Seeded();
        if (best is not null)
            tell(best);
        foreach (var parameters in AllParameters())
        {
            if (best is not null && stop())
                break;
            var packing = Build(parameters);
            if (best is null || IsBetter(packing, best))
                tell(best = packing);
        }
        return best!;
    }

    private Packing? Seeded()
    {
        if (new SeededPacking(model).Start() is not { } draft)
            return null;
        recreate.Run(
            draft,
            new InsertionParameters(PieceOrder.Area, 0, 0, false, FitWeights.Usual, OpeningRule.CheapestArea),
            long.MaxValue
        );
        draft.Keep();
        return draft.Now;
    }

    public static bool IsBetter(Packing a, Packing b) => a.LeftArea != b.LeftArea ? a.LeftArea < b.LeftArea : a.Price < b.Price;

    private Packing Build(in InsertionParameters parameters)
    {
        var draft = new PackingDraft(model);
        recreate.Run(draft, parameters, long.MaxValue);
        draft.Keep();
        return draft.Now;
    }

    private IEnumerable<InsertionParameters> AllParameters()
    {
        OpeningRule[] rules =
            model.Stocks.Length == 1
                ? [OpeningRule.CheapestArea]
                : [OpeningRule.CheapestArea, OpeningRule.Smallest, OpeningRule.Largest];
        foreach (var rule in rules)
        {
            foreach (var order in Enum.GetValues<PieceOrder>())
                yield return new InsertionParameters(order, 0, 0, false, FitWeights.Usual, rule);
            yield return new InsertionParameters(PieceOrder.Area, 0, 0, true, FitWeights.Usual, rule);
        }
    }
}
