using ShopPlanner.Cutting.Steering;

namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>
/// The cheapest choice of layouts that covers all pieces, where every layout can be cut as often as one likes: for each set that
/// is left, each layout that holds its first piece is tried, and what a set comes to is worked out once.
/// </summary>
internal sealed class LeastCover
{
    private const long Unknown = -1;
    private const long Never = long.MaxValue / 4;

    private readonly PieceSets sets;
    private readonly IReadOnlyList<(long Price, int Set)> layouts;
    private readonly int[][] counts;
    private readonly int[][] holding;
    private readonly long[] least;
    private readonly WorkBudget budget;

    /// <param name="sets">Of the job.</param>
    /// <param name="layouts">With the price of each.</param>
    /// <param name="budget">Of steps.</param>
    public LeastCover(PieceSets sets, IReadOnlyList<(long Price, int Set)> layouts, WorkBudget budget)
    {
        (this.sets, this.layouts, this.budget) = (sets, layouts, budget);
        var places = Enumerable.Range(0, sets.Steps.Length);
        counts = [.. layouts.Select(l => places.Select(p => sets.Has(l.Set, p)).ToArray())];
        holding = [.. places.Select(p => Enumerable.Range(0, layouts.Count).Where(l => counts[l][p] > 0).ToArray())];
        least = new long[sets.Count];
        Array.Fill(least, Unknown);
        least[0] = 0;
    }

    /// <summary>Indices of the layouts to cut; null when the budget is spent or they cannot cover all.</summary>
    public List<int>? Choose()
    {
        var rest = (int)(sets.Count - 1);
        if (Least(rest) >= Never || budget.IsSpent)
            return null;
        var chosen = new List<int>();
        while (rest != 0)
        {
            chosen.Add(holding[First(rest)].First(l => layouts[l].Price + least[Without(rest, l)] == least[rest]));
            rest = Without(rest, chosen[^1]);
        }
        return chosen;
    }

    private long Least(int rest)
    {
        if (least[rest] != Unknown)
            return least[rest];
        var best = Never;
        foreach (var layout in holding[First(rest)])
        {
            if (budget.IsSpent)
                return Never;
            budget.Spend(2 * sets.Steps.Length);
            best = Math.Min(best, layouts[layout].Price + Least(Without(rest, layout)));
        }
        return least[rest] = best;
    }

    private int First(int set)
    {
        var place = 0;
        while (sets.Has(set, place) == 0)
            place++;
        return place;
    }

    private int Without(int set, int layout)
    {
        var left = set;
        for (var place = 0; place < sets.Steps.Length; place++)
        {
            if (counts[layout][place] > 0)
                left -= Math.Min(counts[layout][place], sets.Has(set, place)) * sets.Steps[place];
        }
        return left;
    }
}
