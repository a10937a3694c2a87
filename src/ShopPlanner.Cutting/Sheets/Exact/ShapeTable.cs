using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>
/// For every set of pieces that some stock holds, the smallest rectangles that it can be cut from: built up from smaller sets as
/// by Wang (Operations Research 31, 1983), but with all pieces of a set told apart from all others, so that nothing is missed.
/// </summary>
internal sealed class ShapeTable
{
    /// <summary>Sets that a table may have room for.</summary>
    public const int MostSets = 1 << 21;

    private readonly SheetModel model;
    private readonly ShapeFunction?[] shapes;
    private readonly ShapeFunctionBuilder builder;
    private readonly WorkBudget budget;
    private readonly long largest;

    private ShapeTable(SheetModel model, WorkBudget budget)
    {
        (this.model, this.budget) = (model, budget);
        Sets = new PieceSets(model);
        shapes = new ShapeFunction?[Sets.Count];
        builder = new ShapeFunctionBuilder((w, h) => Array.Exists(model.Stocks, s => s.Limit > 0 && s.Holds(w, h)));
        largest = model.Stocks.Where(s => s.Limit > 0).Select(s => s.Area).DefaultIfEmpty(0).Max();
    }

    public PieceSets Sets { get; }

    /// <summary>Sets that some stock holds, the empty one left out, smaller ones first.</summary>
    public List<int> Known { get; } = [];

    /// <summary>Null when no stock holds the set.</summary>
    public ShapeFunction? this[int set] => shapes[set];

    /// <summary>The whole table; null when that is too much work.</summary>
    public static ShapeTable? Of(SheetModel model, WorkBudget budget)
    {
        if (PieceSets.CountFor(model) > MostSets)
            return null;
        var table = new ShapeTable(model, budget);
        budget.Spend(table.Sets.Count);
        return table.Fill() ? table : null;
    }

    private bool Fill()
    {
        for (var place = 0; place < Sets.Types.Length; place++)
            Note(Sets.Steps[place], Single(model.Types[Sets.Types[place]]));
        for (var n = 0; n < Known.Count; n++)
        {
            if (budget.IsSpent)
                return false;
            AddOnes(Known[n]);
        }
        return true;
    }

    private void Note(int set, ShapeFunction? shape)
    {
        if (shape is null)
            return;
        shapes[set] = shape;
        Known.Add(set);
    }

    private ShapeFunction? Single(ItemType type)
    {
        builder.Add(type.W, type.H);
        if (type.CanTurn)
            builder.Add(type.H, type.W);
        return builder.Take();
    }

    // Each set comes from one only, the one without its last piece.
    private void AddOnes(int set)
    {
        var last = Sets.Steps.Length - 1;
        while (Sets.Has(set, last) == 0)
            last--;
        for (var place = last; place < Sets.Steps.Length; place++)
        {
            var larger = set + Sets.Steps[place];
            if (Sets.Has(set, place) < Sets.Most[place] && MayBeHeld(larger))
                Note(larger, Shape(larger));
        }
    }

    // A set is held only if it is held with any one piece less.
    private bool MayBeHeld(int set)
    {
        var area = 0L;
        for (var place = 0; place < Sets.Steps.Length; place++)
        {
            var count = Sets.Has(set, place);
            if (count > 0 && shapes[set - Sets.Steps[place]] is null)
                return false;
            area += count * model.Types[Sets.Types[place]].Area;
        }
        budget.Spend(Sets.Steps.Length);
        return area <= largest;
    }

    private ShapeFunction? Shape(int set)
    {
        foreach (var part in Sets.Parts(set))
        {
            var (a, b) = (shapes[part]!, shapes[set - part]!);
            builder.AddSideBySide(a, b);
            builder.AddStacked(a, b);
            budget.Spend(10 + (6 * (a.Count + b.Count)));
        }
        return builder.Take();
    }
}
