using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>
/// Ruin and recreate towards a goal: the cost allowed is below the best found, so pieces are left over, and the search lowers
/// the area left until nothing is (the idea of Gardeyn and Wauters 2022, "A goal-driven ruin and recreate heuristic for the 2D
/// variable-sized bin packing problem with guillotine constraints"). Late acceptance (Burke and Bykov 2017) lets it climb.
/// </summary>
internal sealed class Improver
{
    private const int HistoryLength = 400;

    private readonly Ledger ledger;
    private readonly Chance chance;
    private readonly Ruin ruin;
    private readonly Recreate recreate;
    private readonly double[] history = new double[HistoryLength];
    private double current;
    private long step;

    public Improver(SheetModel model, long seed)
    {
        chance = new Chance(seed);
        ledger = new Ledger(model);
        ruin = new Ruin(chance);
        recreate = new Recreate(model, chance);
    }

    public Packing Now => ledger.Now;

    /// <summary>Starts from a packing, closing sheets until it is within the cost allowed.</summary>
    public void Start(Packing packing, long mostPrice)
    {
        ledger.Load(packing);
        while (ledger.Now.Price > mostPrice && ledger.Now.Trees.Count > 0)
            ledger.Close(Emptiest());
        recreate.Run(ledger, NextManner(), mostPrice);
        ledger.Keep();
        current = Energy(ledger.Now);
        Array.Fill(history, current);
    }

    /// <summary>Up to so many rounds; true as soon as nothing is left over.</summary>
    public bool Run(long mostPrice, long rounds, Func<bool> stop)
    {
        for (var i = 0L; i < rounds && !ledger.Now.IsComplete; i++)
        {
            if ((i & 63) == 0 && stop())
                break;
            Round(mostPrice);
        }
        return ledger.Now.IsComplete;
    }

    private void Round(long mostPrice)
    {
        ruin.Run(ledger, 3);
        recreate.Run(ledger, NextManner(), mostPrice);
        var energy = Energy(ledger.Now);
        ref var late = ref history[step++ % HistoryLength];
        if (energy <= current || energy <= late)
        {
            current = energy;
            ledger.Keep();
        }
        else
        {
            ledger.Undo();
        }
        late = Math.Min(late, current);
    }

    /// <summary>Area left over, less a reward for free area that lies together.</summary>
    private static double Energy(Packing packing)
    {
        var together = 0.0;
        foreach (var tree in packing.Trees)
            together += (double)tree.Free * tree.Free / tree.Area;
        return packing.LeftArea - (0.1 * together);
    }

    private int Emptiest()
    {
        var trees = ledger.Now.Trees;
        var best = 0;
        for (var i = 1; i < trees.Count; i++)
        {
            if (Share(trees[i]) < Share(trees[best]))
                best = i;
        }
        return best;
    }

    private static double Share(CutTree tree) => (double)tree.Used / tree.Area;

    private Manner NextManner() => new(
        (PieceOrder)(chance.Happens(0.6) ? 0 : chance.Below(6)),
        chance.Happens(0.5) ? 0.1 : 0.5,
        0.02,
        false,
        new FitWeights(0.1 + (0.6 * chance.Unit()), 0.1 * chance.Unit(), 0.5 + chance.Unit()),
        chance.Happens(0.5) ? OpeningRule.CheapestArea : OpeningRule.Random);
}
