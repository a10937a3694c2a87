using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>Puts a piece where the sheet can still be cut afterwards, which is tried on a copy for the few best places.</summary>
internal sealed class CarefulPlacing(SheetModel model, TreeRule rule, RandomSource random, Opening opening)
{
    // Places tried on a sheet, the best first, beside those that belong to the whole sheet.
    private const int MostTried = 6;

    private readonly List<Place> places = [];
    private readonly CutTree scratch = new();

    /// <summary>False when no sheet has a place for the type and none may be opened.</summary>
    public bool PlaceOne(PackingDraft draft, int type, in InsertionParameters parameters, long mostPrice)
    {
        var best = Place.None;
        var index = Find(draft.Now, type, parameters, ref best);
        if (index < 0)
        {
            var stock = opening.Choose(draft.Now, type, parameters.Opening, mostPrice);
            if (stock < 0)
                return false;
            index = draft.Open(stock);
            if (!TryPlaces(draft.Now.Trees[index], type, parameters, ref best))
                throw new InvalidOperationException($"Stock {stock} takes no piece of type {type} though it was said to.");
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
            if (TryPlaces(tree, type, parameters, ref best))
                found = i;
            if (parameters.FirstFit && found >= 0)
                return found;
        }
        return found;
    }

    // True when a better place than the best so far was found.
    private bool TryPlaces(CutTree tree, int type, in InsertionParameters parameters, ref Place best)
    {
        List(tree, type, parameters);
        var tried = 0;
        foreach (var place in places)
        {
            if (place.Score >= best.Score)
                return false;
            if (tried++ >= MostTried && place.Node != 0)
                continue;
            if (!CanBeCut(tree, place))
                continue;
            best = place;
            return true;
        }
        tree.NoteMisfit(type);
        return false;
    }

    private void List(CutTree tree, int type, in InsertionParameters parameters)
    {
        places.Clear();
        var item = model.Types[type];
        var list = new PlaceList(places);
        PlaceFinder.Probe(tree, type, item.W, item.H, model.MinSide, parameters.Weights, ref list);
        if (item.CanTurn)
            PlaceFinder.Probe(tree, type, item.H, item.W, model.MinSide, parameters.Weights, ref list);
        places.Sort((a, b) => a.Score.CompareTo(b.Score));
    }

    private bool CanBeCut(CutTree tree, in Place place)
    {
        if (!rule.Binds(tree.Stock))
            return true;
        scratch.CopyFrom(tree);
        scratch.Insert(place);
        return rule.Allows(scratch);
    }
}
