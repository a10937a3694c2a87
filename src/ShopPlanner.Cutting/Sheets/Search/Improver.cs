using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Steering;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>What searches that run side by side differ in, so that they complement each other.</summary>
/// <param name="Reward">Worth of free area that lies together, as a share of it.</param>
/// <param name="MostSheets">Sheets that a round touches at most.</param>
internal readonly record struct SearchParameters(double Reward, int MostSheets)
{
    public static SearchParameters Of(int worker) => worker % 2 == 0 ? new(0.1, 3) : new(0.3, 5);
}

/// <summary>
/// Ruin and recreate towards a goal: the cost allowed is below the best found, so pieces are left over, and the search lowers
/// the area left until nothing is (the idea of Gardeyn and Wauters 2022, "A goal-driven ruin and recreate heuristic for the 2D
/// variable-sized bin packing problem with guillotine constraints"). Simulated annealing with
/// reheating lets it climb.
/// </summary>
internal sealed class Improver
{
    // Highest and lowest temperature, as shares of a sheet's area.
    private const double Hot = 0.015;
    private const double Cold = 0.001;

    // Rounds from hot to cold, for each sheet in work.
    private const long CyclePerSheet = 1000;
    private const long LeastCycle = 20_000;

    private readonly PackingDraft draft;
    private readonly RandomSource random;
    private readonly Ruin ruin;
    private readonly Recreate recreate;
    private readonly PatternPool pool;
    private readonly SearchParameters parameters;
    private double current;
    private double sheetArea;
    private long cycle;
    private long step;

    /// <param name="model">The problem.</param>
    /// <param name="seed">Where the random numbers start.</param>
    /// <param name="parameters">Of this search.</param>
    public Improver(SheetModel model, long seed, SearchParameters parameters)
    {
        this.parameters = parameters;
        random = new RandomSource(seed);
        draft = new PackingDraft(model);
        pool = new PatternPool(model);
        ruin = new Ruin(random);
        recreate = new Recreate(model, random);
    }

    public Packing Now => draft.Now;

    public PatternPool Pool => pool;

    /// <summary>Starts from a packing, closing sheets until it is within the cost allowed.</summary>
    public void Start(Packing packing, long mostPrice)
    {
        draft.Load(packing);
        while (draft.Now.Price > mostPrice && draft.Now.Trees.Count > 0)
            draft.Close(Emptiest());
        recreate.Run(draft, NextParameters(), mostPrice);
        draft.Keep();
        Restart();
    }

    /// <summary>Goes on from another packing within the cost allowed.</summary>
    public void Take(Packing packing)
    {
        draft.Load(packing);
        Restart();
    }

    private void Restart()
    {
        cycle = Math.Max(LeastCycle, CyclePerSheet * draft.Now.Trees.Count);
        sheetArea = (double)draft.Now.Model.Stocks.Sum(s => s.Area) / draft.Now.Model.Stocks.Length;
        current = Energy(draft.Now);
    }

    /// <summary>Up to so many rounds; true as soon as nothing is left over.</summary>
    public bool Run(long mostPrice, long rounds, Func<bool> stop)
    {
        for (var i = 0L; i < rounds && !draft.Now.IsComplete; i++)
        {
            if ((i & 7) == 0 && stop())
                break;
            Round(mostPrice);
        }
        return draft.Now.IsComplete;
    }

    private void Round(long mostPrice)
    {
        ruin.Run(draft, parameters.MostSheets);
        recreate.Run(draft, NextParameters(), mostPrice);
        var energy = Energy(draft.Now);
        if (energy <= current - (Temperature() * Math.Log(1 - random.Unit())))
        {
            current = energy;
            foreach (var tree in draft.Changed)
                pool.Add(tree);
            draft.Keep();
        }
        else
        {
            draft.Undo();
        }
    }

    // What a change may cost, in area: falls over each cycle, then starts hot again.
    private double Temperature()
    {
        var at = (double)(step++ % cycle) / cycle;
        return sheetArea * Hot * Math.Pow(Cold / Hot, at);
    }

    // Area left over, less a reward for free area that lies together.
    private double Energy(Packing packing)
    {
        var together = 0.0;
        foreach (var tree in packing.Trees)
            together += (double)tree.Free * tree.Free / tree.Area;
        return packing.LeftArea - (together * parameters.Reward);
    }

    private int Emptiest()
    {
        var trees = draft.Now.Trees;
        var best = 0;
        for (var i = 1; i < trees.Count; i++)
        {
            if (Share(trees[i]) < Share(trees[best]))
                best = i;
        }
        return best;
    }

    private static double Share(CutTree tree) => (double)tree.Used / tree.Area;

    private InsertionParameters NextParameters() =>
        new(
            (PieceOrder)(random.Happens(0.6) ? 0 : random.Below(6)),
            random.Happens(0.5) ? 0.1 : 0.5,
            0.02,
            false,
            new FitWeights(0.1 + (0.6 * random.Unit()), 0.1 * random.Unit(), 0.5 + random.Unit()),
            random.Happens(0.5) ? OpeningRule.CheapestArea : OpeningRule.Random
        );
}
