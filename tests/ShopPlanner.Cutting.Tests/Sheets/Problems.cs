using CsCheck;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;

namespace ShopPlanner.Cutting.Tests.Sheets;

/// <summary>Small random problems.</summary>
internal static class Problems
{
    /// <summary>One to six pieces, each of which fits a stock.</summary>
    public static readonly Gen<SheetProblem> Tiny = Gen.Select(Stocks(6, 2), Items(5, 4), Join).Select(AtMostSix);

    /// <summary>One to eight items, each of which fits a stock.</summary>
    public static readonly Gen<SheetProblem> Small = Gen.Select(Stocks(20, 3), Items(14, 8), Join);

    public static SheetStock Sheet(long dx, long dy, long cost = 1, int? available = null) => new(dx, dy, cost, available, false);

    /// <summary>Solves, and fails where a rule is broken.</summary>
    public static SheetSolution Solved(SheetProblem problem, SearchControl control)
    {
        var solution = SheetSolver.Solve(problem, control);
        LayoutRules.Check(problem, solution);
        return solution;
    }

    public static SearchControl Rounds(long rounds, int workers = 1) => new() { Iterations = rounds, Workers = workers };

    private static Gen<SheetStock[]> Stocks(int side, int most) =>
        Gen.Select(
            Gen.Int[2, side],
            Gen.Int[2, side],
            Gen.Int[1, 9],
            Gen.Int[1, 3],
            Gen.Bool,
            (dx, dy, cost, count, limited) => Sheet(dx, dy, cost, limited ? count : null)
        ).Array[1, most];

    private static Gen<SheetItem[]> Items(int side, int most) =>
        Gen.Select(
            Gen.Int[1, side],
            Gen.Int[1, side],
            Gen.Bool,
            Gen.Int[1, 2],
            (dx, dy, turn, demand) => new SheetItem(dx, dy, turn, demand)
        ).Array[1, most];

    /// <summary>Items that fit no stock are made as large as the first stock at most, as the contract wants it.</summary>
    private static SheetProblem Join(SheetStock[] stocks, SheetItem[] items) =>
        new([.. stocks], [.. items.Select(i => Array.Exists(stocks, s => Fits(i, s)) ? i : Shrunk(i, stocks[0]))]);

    private static SheetItem Shrunk(SheetItem item, SheetStock stock) =>
        item with
        {
            Dx = Math.Min(item.Dx, stock.Dx),
            Dy = Math.Min(item.Dy, stock.Dy),
        };

    private static SheetProblem AtMostSix(SheetProblem problem)
    {
        var items = problem.Items;
        while (items.Sum(i => i.Demand) > 6)
            items = items.RemoveAt(items.Length - 1);
        return problem with { Items = items };
    }

    private static bool Fits(SheetItem item, SheetStock stock) =>
        (item.Dx <= stock.Dx && item.Dy <= stock.Dy) || (item.CanTurn && item.Dy <= stock.Dx && item.Dx <= stock.Dy);

    /// <summary>For the message of a failed sample.</summary>
    public static string Text(SheetProblem problem) =>
        string.Join('\n', [.. problem.Stocks.Select(s => $"{s}"), .. problem.Items.Select(i => $"{i}")]);
}
