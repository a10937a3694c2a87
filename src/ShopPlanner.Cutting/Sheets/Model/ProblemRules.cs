using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Sheets.Model;

/// <summary>What a caller must keep to; a breach is a bug of the caller, so these are exceptions and not faults.</summary>
internal static class ProblemRules
{
    /// <exception cref="ArgumentException">A figure is outside its range, or an item fits no stock.</exception>
    public static void Check(SheetProblem problem)
    {
        var scale = AxisScale.Of(problem);
        for (var i = 0; i < problem.Stocks.Length; i++)
            CheckStock(problem.Stocks[i], i, scale);
        for (var i = 0; i < problem.Items.Length; i++)
            CheckItem(problem, i);
        if (problem.Stocks.Any(s => (Int128)s.Cost * problem.Items.Sum(i => (long)i.Demand) > long.MaxValue / 4))
            throw new ArgumentException("A cost is too large: one sheet for every piece must cost less than 2^61.");
    }

    private static void CheckStock(SheetStock stock, int index, AxisScale scale)
    {
        if (stock.Dx <= 0 || stock.Dy <= 0 || stock.Cost < 0 || stock.Available < 0)
            throw new ArgumentException($"Stock {index} needs sides above zero and a cost and a count of zero or more: {stock}.");
        if (stock.Dx / scale.X > SheetModel.MaxSide || stock.Dy / scale.Y > SheetModel.MaxSide)
            throw new ArgumentException(
                $"Stock {index} is too large to count with, at most {SheetModel.MaxSide} measures a side: {stock}."
            );
    }

    private static void CheckItem(SheetProblem problem, int index)
    {
        var item = problem.Items[index];
        if (item.Dx <= 0 || item.Dy <= 0 || item.Demand <= 0)
            throw new ArgumentException($"Item {index} needs sides and a demand above zero: {item}.");
        if (!problem.Stocks.Any(s => Fits(item, s)))
            throw new ArgumentException($"Item {index} fits no stock: {item}.");
    }

    private static bool Fits(SheetItem item, SheetStock stock) =>
        (item.Dx <= stock.Dx && item.Dy <= stock.Dy) || (item.CanTurn && item.Dy <= stock.Dx && item.Dx <= stock.Dy);
}
