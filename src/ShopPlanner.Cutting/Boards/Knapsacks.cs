namespace ShopPlanner.Cutting.Boards;

/// <summary>Which knapsack suits a model.</summary>
internal static class Knapsacks
{
    private const double TabulatedAtOnce = 4e6;
    private const double TabulatedAtAll = 4e9;
    private const double LargestTable = 512e6;

    /// <summary>A table where it is small, else branch and bound with the table behind it where memory allows.</summary>
    public static IKnapsack For(CuttingModel model)
    {
        var work = DenseKnapsack.Work(model);
        if (work <= TabulatedAtOnce)
            return new DenseKnapsack(model);
        var table = work <= TabulatedAtAll && work / 8 <= LargestTable ? new DenseKnapsack(model) : null;
        return new BranchKnapsack(model, table is null ? 20_000_000 : 200_000, table);
    }
}
