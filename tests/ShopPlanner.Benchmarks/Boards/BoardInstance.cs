using System.Collections.Immutable;
using System.Text.Json;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// A published instance. Its kerf twin has the same optimum: lengths times ten, the kerf off every item and every stock, and a
/// saw of that kerf; the problem adds the kerf back, so it is the arithmetic of lengths that the twin puts to the test.
/// </summary>
/// <param name="StockLengths">As cut at the saw: without the kerf.</param>
/// <param name="ItemLengths">As cut at the saw: without the kerf.</param>
public sealed record BoardInstance(
    string Set,
    string Name,
    BoardProblem Problem,
    double? Best,
    ImmutableArray<long> StockLengths,
    ImmutableArray<long> ItemLengths,
    long Kerf
)
{
    public static BoardInstance Read(JsonElement json, long kerf)
    {
        var scale = kerf > 0 ? 10 : 1;
        var stocks = Stocks(json);
        var items = Pairs(json.GetProperty("items"));
        var stockLengths = stocks.Select(s => (s.Length * scale) - kerf).ToImmutableArray();
        var itemLengths = items.Select(i => (i.Length * scale) - kerf).ToImmutableArray();
        if (itemLengths.Any(length => length <= 0))
            throw new UsageException($"A kerf of {kerf} leaves nothing of an item of {InstanceFiles.Name(json)}.");
        var problem = new BoardProblem(
            [.. stocks.Select((s, i) => new BoardStock(stockLengths[i] + kerf, s.Cost, s.Available, false, null))],
            [.. items.Select((item, i) => new BoardItem(itemLengths[i] + kerf, item.Demand))]
        );
        return new(
            InstanceFiles.Set(json),
            InstanceFiles.Name(json),
            problem,
            InstanceFiles.FirstNumber(json, "optimum", "best_ub"),
            stockLengths,
            itemLengths,
            kerf
        );
    }

    private static List<(long Length, long Cost, int? Available)> Stocks(JsonElement json) =>
        json.TryGetProperty("stocks", out var stocks)
            ? [.. stocks.EnumerateArray().Select(s => (s[0].GetInt64(), s[1].GetInt64(), Limit(s[2])))]
            : [(json.GetProperty("capacity").GetInt64(), 1, null)];

    private static int? Limit(JsonElement available) => available.ValueKind == JsonValueKind.Null ? null : available.GetInt32();

    private static List<(long Length, int Demand)> Pairs(JsonElement items) =>
        [.. items.EnumerateArray().Select(item => (item[0].GetInt64(), item[1].GetInt32()))];
}
