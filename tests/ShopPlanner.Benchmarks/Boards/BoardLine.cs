using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>One instance's result, for a program to read.</summary>
/// <param name="Kerf">The saw's, in the unit of the lengths.</param>
/// <param name="Layouts">Every stock cut, so that an outsider can check; null when not asked for.</param>
public sealed record BoardLine(
    string Set,
    string Name,
    double Value,
    double Bound,
    bool Proven,
    bool Complete,
    double Seconds,
    long Kerf,
    IReadOnlyList<BoardLayoutLine>? Layouts
)
{
    public static BoardLine From(BoardInstance instance, Outcome outcome, BoardSolution solution, bool layouts) =>
        new(
            outcome.Set,
            outcome.Name,
            outcome.Value,
            outcome.Bound,
            outcome.Proven,
            solution.Complete,
            outcome.Seconds,
            instance.Kerf,
            layouts ? [.. solution.Patterns.Select(pattern => BoardLayoutLine.From(instance, pattern))] : null
        );
}

/// <summary>How one stock, or several alike, is cut.</summary>
/// <param name="Stock">Index of the stock in the instance.</param>
/// <param name="Length">The stock's, kerf twin applied.</param>
/// <param name="Times">How many are cut like this.</param>
/// <param name="Pieces">Item index, start and length of every piece.</param>
public sealed record BoardLayoutLine(int Stock, long Length, int Times, IReadOnlyList<long[]> Pieces)
{
    public static BoardLayoutLine From(BoardInstance instance, BoardPattern pattern)
    {
        var pieces = new List<long[]>();
        var start = 0L;
        for (var item = 0; item < pattern.Counts.Length; item++)
        {
            for (var n = 0; n < pattern.Counts[item]; n++)
            {
                pieces.Add([item, start, instance.ItemLengths[item]]);
                start += instance.ItemLengths[item] + instance.Kerf;
            }
        }

        return new(pattern.Stock, instance.StockLengths[pattern.Stock], pattern.Times, pieces);
    }
}
