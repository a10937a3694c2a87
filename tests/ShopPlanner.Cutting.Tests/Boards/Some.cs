using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Tests.Boards;

/// <summary>Problems and settings, made short.</summary>
internal static class Some
{
    public static BoardStock Stock(long capacity, long cost, int? available = null) =>
        new(capacity, cost, available, false, null);

    public static BoardStock Offcut(long capacity, long? keepAtLeast = null) => new(capacity, 0, 1, true, keepAtLeast);

    public static BoardProblem Problem(IEnumerable<BoardStock> stocks, params (long Size, int Demand)[] items) =>
        new([.. stocks], [.. items.Select(item => new BoardItem(item.Size, item.Demand))]);

    /// <summary>One unlimited stock of cost 1, so that the cost counts stocks.</summary>
    public static BoardProblem Bins(long capacity, params (long Size, int Demand)[] items) =>
        Problem([Stock(capacity, 1)], items);

    public static SearchControl Seconds(double seconds) =>
        new() { Time = TimeSpan.FromSeconds(seconds), Cancel = TestContext.Current.CancellationToken };

    public static BoardSolution Solve(BoardProblem problem, double seconds = 20) => Solve(problem, Seconds(seconds));

    /// <summary>Solves, and fails where a rule is broken.</summary>
    public static BoardSolution Solve(BoardProblem problem, SearchControl control)
    {
        var solution = BoardSolver.Solve(problem, control);
        Assert.Empty(Rules.Broken(problem, solution));
        return solution;
    }

    /// <summary>A small problem of several stocks, some limited.</summary>
    public static BoardProblem Random(Random random, int mostItems, int mostDemand, bool alwaysComplete)
    {
        var stocks = Enumerable
            .Range(0, random.Next(1, 4))
            .Select(_ => Stock(random.Next(8, 21), random.Next(0, 10), random.Next(3) == 0 ? random.Next(0, 3) : null))
            .ToList();
        if (alwaysComplete)
            stocks.Add(Stock(20, random.Next(1, 12)));
        var longest = (int)stocks.Max(stock => stock.Capacity);
        var items = Enumerable
            .Range(0, random.Next(1, mostItems + 1))
            .Select(_ => ((long)random.Next(2, longest + 1), random.Next(1, mostDemand + 1)));
        return Problem(stocks, [.. items]);
    }
}
