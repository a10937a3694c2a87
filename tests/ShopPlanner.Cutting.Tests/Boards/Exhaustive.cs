using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Tests.Boards;

/// <summary>
/// Least unmet pieces and then least cost by trying everything: every subset of pieces for the next stock, memory of what is
/// left as the only shortcut. For tiny problems.
/// </summary>
internal sealed class Exhaustive
{
    private readonly BoardProblem problem;
    private readonly Dictionary<string, (int Unmet, long Cost)> solved = [];

    private Exhaustive(BoardProblem problem) => this.problem = problem;

    public static (int Unmet, long Cost) Best(BoardProblem problem) =>
        new Exhaustive(problem).From(0, 0, [.. problem.Items.Select(item => item.Demand)]);

    // Stocks are taken in order; of one stock as many as there are, each with any pieces.
    private (int Unmet, long Cost) From(int stock, int used, int[] left)
    {
        if (left.Sum() == 0)
            return (0, 0);
        if (stock == problem.Stocks.Length)
            return (left.Sum(), 0);
        var key = $"{stock}/{used}/{string.Join(',', left)}";
        if (solved.TryGetValue(key, out var known))
            return known;
        var best = From(stock + 1, 0, left);
        if (used < (problem.Stocks[stock].Available ?? int.MaxValue))
        {
            foreach (var rest in Fillings(left, 0, problem.Stocks[stock].Capacity))
            {
                if (rest.AsSpan().SequenceEqual(left))
                    continue;
                var (unmet, cost) = From(stock, used + 1, rest);
                if ((unmet, cost + problem.Stocks[stock].Cost).CompareTo(best) < 0)
                    best = (unmet, cost + problem.Stocks[stock].Cost);
            }
        }

        return solved[key] = best;
    }

    private IEnumerable<int[]> Fillings(int[] left, int item, long room)
    {
        if (item == left.Length)
            return [left];
        return Enumerable
            .Range(0, left[item] + 1)
            .Where(count => count * problem.Items[item].Size <= room)
            .SelectMany(count =>
            {
                var rest = (int[])left.Clone();
                rest[item] -= count;
                return Fillings(rest, item + 1, room - (count * problem.Items[item].Size));
            });
    }
}
