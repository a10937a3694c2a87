using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Sheets.Search;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Polishing;

/// <summary>
/// Works on the leftovers of a complete packing without ever raising its price: sheets are emptied and filled again, some
/// into a smaller part of the sheet so that the rest stays in one piece, and what is worth no less is kept.
/// </summary>
internal sealed class Polisher
{
    // Longest time spent on leftovers, in seconds.
    private const double MostSeconds = 2;

    // Share of the time taken so far that settings alone are worth.
    private const double SettingsShare = 0.1;

    private const long MostRounds = 20_000;

    private readonly SheetModel model;
    private readonly PackingDraft draft;
    private readonly RandomSource random;
    private readonly Ruin ruin;
    private readonly Recreate recreate;
    private readonly PackingEvaluator evaluator;
    private readonly StockType[] binned;
    private readonly List<int> smaller = [];

    public Polisher(SheetModel model, int seed)
    {
        this.model = model;
        random = new RandomSource(seed);
        draft = new PackingDraft(model);
        ruin = new Ruin(random);
        recreate = new Recreate(model, random);
        evaluator = new PackingEvaluator(model);
        binned = [.. model.Stocks.Where(stock => stock.FromBin)];
    }

    /// <summary>False when leftovers of every packing of a price are worth the same.</summary>
    public bool MindsLeftovers => evaluator.Matters;

    /// <param name="packing">Complete.</param>
    /// <param name="pool">Takes the layouts met.</param>
    /// <param name="limits">What time is left.</param>
    public Packing Run(Packing packing, PatternPool pool, SearchLimits limits)
    {
        if (packing.Trees.Count == 0)
            return packing;
        draft.Load(packing);
        var current = evaluator.Of(draft.Now);
        var end = limits.Clock.Elapsed.TotalSeconds + Seconds(limits.Clock);
        var rounds = limits.Rounds(MostRounds);
        for (var i = 0L; i < rounds && limits.Clock.Elapsed.TotalSeconds < end && !limits.Clock.IsOver; i++)
            current = Round(packing.Price, current, pool);
        return draft.Now.Clone();
    }

    private double Seconds(SearchClock clock) =>
        clock.SecondsLeft(
            MindsLeftovers ? MostSeconds : Math.Clamp(clock.Elapsed.TotalSeconds * SettingsShare, 0.02, MostSeconds)
        );

    private PackingObjectives Round(long mostPrice, PackingObjectives current, PatternPool pool)
    {
        if (random.Happens(0.5))
            Reopen();
        else
            ruin.Run(draft, 2);
        if (binned.Length > 0 && random.Happens(0.3))
            OpenFromBin(mostPrice);
        recreate.Run(draft, NextParameters(), mostPrice);
        WidenAll();
        if (draft.Now.IsComplete && evaluator.Of(draft.Now) is var after && after.IsNoWorseThan(current))
        {
            foreach (var tree in draft.Changed.Where(t => !t.IsEmpty))
                pool.Add(tree);
            draft.Keep();
            return after;
        }
        draft.Undo();
        return current;
    }

    // Empties a sheet and opens it, or another stock, as a smaller one.
    private void Reopen()
    {
        var index = Emptier();
        var tree = draft.Now.Trees[index];
        var root = tree.Nodes[0];
        var share = (double)tree.Used / tree.Area;
        var stock = model.Stocks[tree.Stock];
        draft.Close(index);
        if (random.Happens(0.5))
            smaller.Add(draft.Open(stock.Index, Between(share * stock.W, root.W), stock.H));
        else
            smaller.Add(draft.Open(stock.Index, stock.W, Between(share * stock.H, root.H)));
    }

    // An offcut beside what is open, so that pieces may move into it.
    private void OpenFromBin(long mostPrice)
    {
        var stock = binned[random.Below(binned.Length)];
        if (draft.Now.CanOpen(stock.Index, mostPrice))
            smaller.Add(draft.Open(stock.Index));
    }

    private int Between(double least, int most) => Math.Max(1, (int)(least + ((most - least) * random.Unit())));

    // Two at random, the emptier of them.
    private int Emptier()
    {
        var trees = draft.Now.Trees;
        var (a, b) = (random.Below(trees.Count), random.Below(trees.Count));
        return trees[a].Free >= trees[b].Free ? a : b;
    }

    private void WidenAll()
    {
        // Closing one puts the last in its place, so the last go first.
        foreach (var index in smaller.OrderDescending())
        {
            var tree = draft.Own(index);
            if (tree.IsEmpty)
                draft.Close(index);
            else
                tree.Widen(model.Stocks[tree.Stock].W, model.Stocks[tree.Stock].H);
        }
        smaller.Clear();
    }

    private InsertionParameters NextParameters() =>
        new(
            (PieceOrder)random.Below(6),
            random.Happens(0.5) ? 0.1 : 0.6,
            0.02,
            random.Happens(0.2),
            new FitWeights(0.1 + (0.6 * random.Unit()), 0.1 * random.Unit(), 0.5 + random.Unit()),
            random.Happens(0.5) ? OpeningRule.Smallest : OpeningRule.Random
        );
}
