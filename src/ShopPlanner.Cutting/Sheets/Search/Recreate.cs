using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>What pieces are put in first.</summary>
internal enum PieceOrder
{
    Area,
    LongSide,
    ShortSide,
    Width,
    Height,
    Perimeter,
}

/// <summary>How an insertion pass goes.</summary>
/// <param name="Order">Largest of this first.</param>
/// <param name="Noise">Share of the key that is random.</param>
/// <param name="Blink">Probability of overlooking a sheet (Christiaens and Vanden Berghe 2020, "Slack induction by string
/// removals", for routes).</param>
/// <param name="FirstFit">True to take the first sheet that has a place.</param>
/// <param name="Weights">How places are judged.</param>
/// <param name="Opening">Which stock to open.</param>
internal readonly record struct InsertionParameters(
    PieceOrder Order,
    double Noise,
    double Blink,
    bool FirstFit,
    FitWeights Weights,
    OpeningRule Opening
);

/// <summary>Puts the pieces left into the sheets in work, opening more as far as the cost allowed goes.</summary>
internal sealed class Recreate
{
    // Probability of trying a turning item one way only.
    private const double OneWay = 0.1;

    private readonly SheetModel model;
    private readonly RandomSource random;
    private readonly int[] order;
    private readonly double[] keys;
    private readonly Opening opening;
    private readonly CarefulPlacing? careful;

    public Recreate(SheetModel model, RandomSource random)
    {
        (this.model, this.random) = (model, random);
        (order, keys) = (new int[model.Types.Length], new double[model.Types.Length]);
        opening = new Opening(model, random);
        careful = model.Rule is { } rule ? new(model, rule, random, opening) : null;
    }

    public void Run(PackingDraft draft, in InsertionParameters parameters, long mostPrice)
    {
        var count = Sort(draft.Now, parameters);
        for (var i = 0; i < count; i++)
        {
            var type = order[i];
            while (draft.Now.Left[type] > 0 && PlaceOne(draft, type, parameters, mostPrice)) { }
        }
    }

    private int Sort(Packing now, in InsertionParameters parameters)
    {
        var count = 0;
        for (var t = 0; t < model.Types.Length; t++)
        {
            if (now.Left[t] == 0)
                continue;
            order[count] = t;
            keys[count++] = -Key(model.Types[t], parameters.Order) * (1 - (parameters.Noise * random.Unit()));
        }
        Array.Sort(keys, order, 0, count);
        return count;
    }

    private static double Key(ItemType type, PieceOrder order) =>
        order switch
        {
            PieceOrder.Area => type.Area,
            PieceOrder.LongSide => type.Long + (1e-6 * type.Short),
            PieceOrder.ShortSide => type.Short + (1e-6 * type.Long),
            PieceOrder.Width => type.W + (1e-6 * type.H),
            PieceOrder.Height => type.H + (1e-6 * type.W),
            _ => type.W + type.H,
        };

    private bool PlaceOne(PackingDraft draft, int type, in InsertionParameters parameters, long mostPrice)
    {
        if (careful is not null)
            return careful.PlaceOne(draft, type, parameters, mostPrice);
        var best = Place.None;
        var index = Find(draft.Now, type, parameters, ref best);
        if (index < 0)
        {
            var stock = opening.Choose(draft.Now, type, parameters.Opening, mostPrice);
            if (stock < 0)
                return false;
            index = draft.Open(stock);
            Probe(draft.Now.Trees[index], type, parameters, ref best);
        }
        draft.Insert(index, best);
        return true;
    }

    private int Find(Packing now, int type, in InsertionParameters parameters, ref Place best)
    {
        var found = -1;
        var area = model.Types[type].Area;
        for (var i = 0; i < now.Trees.Count; i++)
        {
            var tree = now.Trees[i];
            if (tree.Free < area || tree.IsMisfit(type) || (parameters.Blink > 0 && random.Happens(parameters.Blink)))
                continue;
            var before = best.Score;
            if (!Probe(tree, type, parameters, ref best))
                tree.NoteMisfit(type);
            if (best.Score < before)
                found = i;
            if (parameters.FirstFit && found >= 0)
                return found;
        }
        return found;
    }

    // Now and then a turning item is tried one way only, as far as that finds a place.
    private bool Probe(CutTree tree, int type, in InsertionParameters parameters, ref Place best)
    {
        var item = model.Types[type];
        if (!item.CanTurn)
            return Probe(tree, type, item.W, item.H, parameters, ref best);
        var turned = random.Happens(0.5);
        var found = Probe(tree, type, turned ? item.H : item.W, turned ? item.W : item.H, parameters, ref best);
        return found && parameters.Blink > 0 && random.Happens(OneWay)
            ? found
            : found | Probe(tree, type, turned ? item.W : item.H, turned ? item.H : item.W, parameters, ref best);
    }

    private bool Probe(CutTree tree, int type, int w, int h, in InsertionParameters parameters, ref Place best) =>
        PlaceFinder.Probe(tree, type, w, h, model.MinSide, parameters.Weights, ref best);
}
