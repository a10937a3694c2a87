using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Boards;

/// <summary>Tells a plan in the problem's own terms: merged items and stocks are told apart again.</summary>
internal static class SolutionBuilder
{
    public static BoardSolution Of(BoardProblem problem, Search search)
    {
        var plan = search.Best;
        var model = search.Model;
        var wanted = problem.Items.Select(item => item.Demand).ToArray();
        var left = problem.Stocks.Select(stock => stock.Available ?? int.MaxValue).ToArray();
        var patterns = new List<BoardPattern>();
        foreach (var (pattern, times) in plan.Cuts)
            Tell(model, pattern, times, wanted, left, patterns);
        return new BoardSolution(
            [.. patterns],
            [.. wanted],
            plan.Cost * model.CostUnit,
            search.CostBound(plan) * model.CostUnit,
            plan.Unmet.All(unmet => unmet == 0),
            search.Proven
        );
    }

    // As often as the same members serve, the pattern stays one.
    private static void Tell(
        CuttingModel model,
        Pattern pattern,
        int times,
        int[] wanted,
        int[] left,
        List<BoardPattern> patterns
    )
    {
        while (times > 0)
        {
            var counts = Assign(model, pattern, wanted);
            var stock = model.Kinds[pattern.Kind].Members.First(member => left[member] > 0);
            var now = Math.Min(times, left[stock]);
            for (var item = 0; item < counts.Length; item++)
                if (counts[item] > 0)
                    now = Math.Min(now, wanted[item] / counts[item]);
            for (var item = 0; item < counts.Length; item++)
                wanted[item] -= counts[item] * now;
            left[stock] -= now;
            patterns.Add(new BoardPattern(stock, now, [.. counts]));
            times -= now;
        }
    }

    private static int[] Assign(CuttingModel model, Pattern pattern, int[] wanted)
    {
        var counts = new int[wanted.Length];
        foreach (var piece in pattern.Pieces)
        {
            var open = piece.Count;
            foreach (var member in model.Members[piece.Item])
            {
                counts[member] = Math.Min(open, wanted[member]);
                open -= counts[member];
            }
        }

        return counts;
    }
}
