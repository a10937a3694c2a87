using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Cutting.Tests.Sheets;

/// <summary>
/// The least cost of a tiny problem by trying every cut and every way of sharing the pieces between its two sides. Slow and
/// simple on purpose: nothing of the solver is used.
/// </summary>
internal sealed class EveryCut
{
    private readonly SheetProblem problem;
    private readonly int[] pieces;
    private readonly Dictionary<(long, long, int), bool> known = [];

    public EveryCut(SheetProblem problem)
    {
        this.problem = problem;
        pieces = [.. problem.Items.SelectMany((item, i) => Enumerable.Repeat(i, item.Demand))];
    }

    /// <summary>Least cost of all pieces; null when they cannot all be placed.</summary>
    public long? LeastCost() =>
        LeastCost((1 << pieces.Length) - 1, [.. problem.Stocks.Select(s => s.Available ?? pieces.Length)]);

    private long? LeastCost(int wanted, int[] stocks)
    {
        if (wanted == 0)
            return 0;
        long? best = null;
        var first = wanted & -wanted;
        for (var s = 0; s < stocks.Length; s++)
        {
            if (stocks[s] == 0)
                continue;
            stocks[s]--;
            for (var set = wanted; set > 0; set = (set - 1) & wanted)
            {
                if ((set & first) == 0 || !Cuts(problem.Stocks[s].Dx, problem.Stocks[s].Dy, set))
                    continue;
                if (LeastCost(wanted & ~set, stocks) is { } rest && !(rest + problem.Stocks[s].Cost >= best))
                    best = rest + problem.Stocks[s].Cost;
            }
            stocks[s]++;
        }
        return best;
    }

    /// <summary>True when the set of pieces can be cut from a rectangle.</summary>
    private bool Cuts(long dx, long dy, int set)
    {
        if ((set & (set - 1)) == 0)
            return set == 0 || Holds(dx, dy, problem.Items[pieces[int.TrailingZeroCount(set)]]);
        if (!known.TryGetValue((dx, dy, set), out var answer))
            known.Add((dx, dy, set), answer = TryCuts(dx, dy, set));
        return answer;
    }

    private static bool Holds(long dx, long dy, SheetItem item) =>
        (item.Dx <= dx && item.Dy <= dy) || (item.CanTurn && item.Dy <= dx && item.Dx <= dy);

    private bool TryCuts(long dx, long dy, int set)
    {
        for (var part = (set - 1) & set; part > 0; part = (part - 1) & set)
        {
            for (var x = 1L; x < dx; x++)
                if (Cuts(x, dy, part) && Cuts(dx - x, dy, set & ~part))
                    return true;
            for (var y = 1L; y < dy; y++)
                if (Cuts(dx, y, part) && Cuts(dx, dy - y, set & ~part))
                    return true;
        }
        return false;
    }
}
