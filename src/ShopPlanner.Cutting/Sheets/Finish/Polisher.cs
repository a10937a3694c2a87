using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Search;
using ShopPlanner.Cutting.Sheets.Trees;

namespace ShopPlanner.Cutting.Sheets.Finish;

/// <summary>
/// Works on the leftovers of a complete packing without ever raising its price: sheets are emptied and filled again, some
/// into a smaller part of the sheet so that the rest stays in one piece, and what is worth no less is kept.
/// </summary>
internal sealed class Polisher
{
    /// <summary>Longest time spent on leftovers, in seconds.</summary>
    private const double MostSeconds = 2;

    /// <summary>Share of the time taken so far that settings alone are worth.</summary>
    private const double SettingsShare = 0.1;

    private const long MostRounds = 20_000;

    private readonly SheetModel model;
    private readonly Ledger ledger;
    private readonly Chance chance;
    private readonly Ruin ruin;
    private readonly Recreate recreate;
    private readonly PackingWorth worth;
    private readonly StockType[] binned;
    private readonly List<int> smaller = [];

    public Polisher(SheetModel model, int seed)
    {
        this.model = model;
        chance = new Chance(seed);
        ledger = new Ledger(model);
        ruin = new Ruin(chance);
        recreate = new Recreate(model, chance);
        worth = new PackingWorth(model);
        binned = [.. model.Stocks.Where(stock => stock.FromBin)];
    }

    /// <summary>False when leftovers of every packing of a price are worth the same.</summary>
    public bool MindsLeftovers => worth.Matters;

    /// <param name="packing">Complete.</param>
    /// <param name="pool">Takes the layouts met.</param>
    /// <param name="effort">What time is left.</param>
    public Packing Run(Packing packing, PatternPool pool, Effort effort)
    {
        if (packing.Trees.Count == 0)
            return packing;
        ledger.Load(packing);
        var current = worth.Of(ledger.Now);
        var end = effort.Clock.Elapsed.TotalSeconds + Seconds(effort.Clock);
        var rounds = effort.Rounds(MostRounds);
        for (var i = 0L; i < rounds && effort.Clock.Elapsed.TotalSeconds < end && !effort.Clock.IsOver; i++)
            current = Round(packing.Price, current, pool);
        return ledger.Now.Clone();
    }

    private double Seconds(SearchClock clock) =>
        clock.SecondsLeft(
            MindsLeftovers ? MostSeconds : Math.Clamp(clock.Elapsed.TotalSeconds * SettingsShare, 0.02, MostSeconds)
        );

    private Merit Round(long mostPrice, Merit current, PatternPool pool)
    {
        if (chance.Happens(0.5))
            Reopen();
        else
            ruin.Run(ledger, 2);
        if (binned.Length > 0 && chance.Happens(0.3))
            OpenFromBin(mostPrice);
        recreate.Run(ledger, NextManner(), mostPrice);
        WidenAll();
        if (ledger.Now.IsComplete && worth.Of(ledger.Now) is var after && after.IsNoWorseThan(current))
        {
            foreach (var tree in ledger.Changed.Where(t => !t.IsEmpty))
                pool.Add(tree);
            ledger.Keep();
            return after;
        }
        ledger.Undo();
        return current;
    }

    /// <summary>Empties a sheet and opens it, or another stock, as a smaller one.</summary>
    private void Reopen()
    {
        var index = Emptier();
        var tree = ledger.Now.Trees[index];
        var root = tree.Nodes[0];
        var share = (double)tree.Used / tree.Area;
        var stock = model.Stocks[tree.Stock];
        ledger.Close(index);
        if (chance.Happens(0.5))
            smaller.Add(ledger.Open(stock.Index, Between(share * stock.W, root.W), stock.H));
        else
            smaller.Add(ledger.Open(stock.Index, stock.W, Between(share * stock.H, root.H)));
    }

    /// <summary>An offcut beside what is open, so that pieces may move into it.</summary>
    private void OpenFromBin(long mostPrice)
    {
        var stock = binned[chance.Below(binned.Length)];
        if (ledger.Now.CanOpen(stock.Index, mostPrice))
            smaller.Add(ledger.Open(stock.Index));
    }

    private int Between(double least, int most) => Math.Max(1, (int)(least + ((most - least) * chance.Unit())));

    /// <summary>Two at random, the emptier of them.</summary>
    private int Emptier()
    {
        var trees = ledger.Now.Trees;
        var (a, b) = (chance.Below(trees.Count), chance.Below(trees.Count));
        return trees[a].Free >= trees[b].Free ? a : b;
    }

    private void WidenAll()
    {
        // Closing one puts the last in its place, so the last go first.
        foreach (var index in smaller.OrderDescending())
        {
            var tree = ledger.Own(index);
            if (tree.IsEmpty)
                ledger.Close(index);
            else
                tree.Widen(model.Stocks[tree.Stock].W, model.Stocks[tree.Stock].H);
        }
        smaller.Clear();
    }

    private Manner NextManner() =>
        new(
            (PieceOrder)chance.Below(6),
            chance.Happens(0.5) ? 0.1 : 0.6,
            0.02,
            chance.Happens(0.2),
            new FitWeights(0.1 + (0.6 * chance.Unit()), 0.1 * chance.Unit(), 0.5 + chance.Unit()),
            chance.Happens(0.5) ? OpeningRule.Smallest : OpeningRule.Random
        );
}
