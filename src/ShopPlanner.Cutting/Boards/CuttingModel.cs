using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Boards;

/// <summary>Stock of one kind: all of it alike in every respect.</summary>
/// <param name="Capacity">In the model's measure.</param>
/// <param name="Cost">In the model's cost unit.</param>
/// <param name="Limit">Most that can be cut; for unlimited stock the number of pieces wanted, which is never exceeded.</param>
/// <param name="Unlimited">True where as many as wanted can be had.</param>
/// <param name="Origin">As asked; all members are alike.</param>
/// <param name="Members">Indices into the problem's stocks.</param>
internal sealed record StockKind(long Capacity, long Cost, int Limit, bool Unlimited, BoardStock Origin, int[] Members);

/// <summary>
/// The problem as it is searched: equal sizes and equal stocks merged, sizes in descending order over their greatest common
/// measure, costs over theirs. A piece may stay unmet at <see cref="Shortage"/>, which is more than any plan costs, so that the
/// total puts placing pieces first and cost second.
/// </summary>
internal sealed class CuttingModel
{
    /// <summary>Sizes of the items, descending, all different.</summary>
    public required long[] Sizes { get; init; }

    /// <summary>Pieces wanted of each.</summary>
    public required int[] Demands { get; init; }

    /// <summary>Kinds of stock, by capacity descending.</summary>
    public required StockKind[] Kinds { get; init; }

    /// <summary>What one unit of cost is in the problem's.</summary>
    public required long CostUnit { get; init; }

    /// <summary>What one unit of size is in the problem's.</summary>
    public required long SizeUnit { get; init; }

    /// <summary>Price of a piece that is not placed.</summary>
    public required long Shortage { get; init; }

    /// <summary>The problem's items that each merged item stands for.</summary>
    public required int[][] Members { get; init; }

    /// <summary>Number of different sizes.</summary>
    public int Count => Sizes.Length;

    /// <summary>Pieces wanted in all.</summary>
    public int Pieces => Demands.Sum();

    /// <summary>Capacity of the longest stock; zero when there is none.</summary>
    public long Longest => Kinds.Length == 0 ? 0 : Kinds[0].Capacity;

    /// <summary>True where some unlimited stock takes the item, so that it is never left over.</summary>
    public bool AlwaysFits(int item) => Kinds.Any(kind => kind.Unlimited && kind.Capacity >= Sizes[item]);

    /// <summary>The model of a problem.</summary>
    public static CuttingModel Of(BoardProblem problem)
    {
        var sizeUnit = Gcd(problem.Items.Select(item => item.Size));
        var costUnit = Gcd(problem.Stocks.Select(stock => stock.Cost));
        var items = problem
            .Items.Select((item, index) => (item, index))
            .GroupBy(x => x.item.Size)
            .OrderByDescending(size => size.Key)
            .ToList();
        var demands = items.Select(size => size.Sum(x => x.item.Demand)).ToArray();
        var kinds = Merge(problem, sizeUnit, costUnit, demands.Sum());
        var sizes = items.Select(size => size.Key / sizeUnit).ToArray();
        return new CuttingModel
        {
            Sizes = sizes,
            Demands = demands,
            Kinds = kinds,
            CostUnit = costUnit,
            SizeUnit = sizeUnit,
            Shortage = checked(1 + MostCost(kinds, sizes, demands)),
            Members = [.. items.Select(size => size.Select(x => x.index).ToArray())],
        };
    }

    private static StockKind[] Merge(BoardProblem problem, long sizeUnit, long costUnit, int pieces) =>
        [
            .. problem
                .Stocks.Select((stock, index) => (stock, index))
                .Where(x => x.stock.Available != 0)
                .GroupBy(x => x.stock with { Available = null })
                .Select(alike => Kind([.. alike], sizeUnit, costUnit, pieces))
                .OrderByDescending(kind => kind.Capacity)
                .ThenBy(kind => kind.Cost),
        ];

    private static StockKind Kind(List<(BoardStock Stock, int Index)> alike, long sizeUnit, long costUnit, int pieces)
    {
        var first = alike[0].Stock;
        var unlimited = alike.Any(x => x.Stock.Available is null);
        var limit = unlimited ? pieces : (int)Math.Min(pieces, alike.Sum(x => (long)x.Stock.Available!.Value));
        return new(first.Capacity / sizeUnit, first.Cost / costUnit, limit, unlimited, first, [.. alike.Select(x => x.Index)]);
    }

    // Every plan cuts limited stock at most to its limit and needs at most one unlimited stock for each piece.
    private static long MostCost(StockKind[] kinds, long[] sizes, int[] demands)
    {
        var limited = kinds.Where(kind => !kind.Unlimited).Sum(kind => checked(kind.Cost * kind.Limit));
        var unlimited = sizes.Select((size, i) => checked(demands[i] * Cheapest(kinds, size))).Sum();
        return checked(limited + unlimited);
    }

    private static long Cheapest(StockKind[] kinds, long size) =>
        kinds.Where(kind => kind.Unlimited && kind.Capacity >= size).Select(kind => kind.Cost).DefaultIfEmpty(0).Min();

    private static long Gcd(IEnumerable<long> values)
    {
        var gcd = values.Aggregate(0L, Gcd);
        return gcd == 0 ? 1 : gcd;
    }

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
