using System.Numerics;
using System.Runtime.InteropServices;

namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>
/// The most that pieces cut from a rectangle by edge-to-edge cuts are worth, for every rectangle of a grid: Gilmore and Gomory's
/// recursion (Operations Research 14, 1966). Pieces may be cut as often as they fit, but for the counted types, which are cut at
/// most so many times. All in whole numbers.
/// </summary>
internal sealed class CutKnapsack
{
    /// <summary>No rectangle may be worth more, so that sums stay in range.</summary>
    public const int MostValue = 1 << 29;

    private readonly CutGrid grid;
    private readonly int columns;
    private readonly Orientation[][] orientationsByX;
    private CountStates states = CountStates.None;
    private int[][] table = [];
    private int[][] backward = [];
    private int[] values = [];

    public CutKnapsack(CutGrid grid)
    {
        this.grid = grid;
        columns = grid.Y.Count;
        orientationsByX = [.. Enumerable.Range(0, grid.X.Count).Select(i => grid.Orientations.Where(l => l.X == i).ToArray())];
        Count(CountStates.None);
    }

    /// <summary>Steps of one solution.</summary>
    public long Work => grid.Work * states.Pairs;

    /// <summary>Sets the types that are counted.</summary>
    public void Count(CountStates counted)
    {
        states = counted;
        table = [.. Enumerable.Range(0, states.Count).Select(_ => new int[grid.X.Count * columns])];
        backward = [.. table.Select(_ => new int[columns])];
    }

    /// <summary>The most a sheet of each stock is worth; null when stopped. <see cref="MostValue"/> must be kept to.</summary>
    public long[]? Solve(int[] valuesOfTypes, Func<bool> stop)
    {
        values = valuesOfTypes;
        for (var i = 0; i < grid.X.Count; i++)
        {
            if (stop())
                return null;
            foreach (var ways in states.Ways)
                FillRow(i, ways);
        }
        return [.. grid.Stocks.Select(s => (long)Row(states.Count - 1, s.X)[s.Y])];
    }

    /// <summary>Pieces of each type in a layout of a stock that is worth what <see cref="Solve"/> told.</summary>
    public int[] Pattern(int stock) =>
        new KnapsackTrace(grid, states, values, table).Pieces(grid.Stocks[stock].X, grid.Stocks[stock].Y);

    private void FillRow(int i, StatePair[] ways)
    {
        var state = ways[0].Whole;
        var row = Row(state, i);
        if (i == 0)
            row.Clear();
        else
            Row(state, i - 1).CopyTo(row);
        foreach (var pair in ways)
            CutAcrossX(row, i, pair);
        Place(row, i, state);
        CutAcrossY(row, i, ways);
    }

    private void CutAcrossX(Span<int> row, int i, StatePair pair)
    {
        var rest = grid.X.Rest[i];
        for (var k = 0; k < rest.Length; k++)
            RaiseToSum(row, Row(pair.First, k + 1), Row(pair.Second, rest[k]));
    }

    private static void RaiseToSum(Span<int> row, ReadOnlySpan<int> a, ReadOnlySpan<int> b)
    {
        var rows = MemoryMarshal.Cast<int, Vector<int>>(row);
        var first = MemoryMarshal.Cast<int, Vector<int>>(a);
        var second = MemoryMarshal.Cast<int, Vector<int>>(b);
        for (var v = 0; v < rows.Length; v++)
            rows[v] = Vector.Max(rows[v], first[v] + second[v]);
        for (var j = rows.Length * Vector<int>.Count; j < row.Length; j++)
            row[j] = Math.Max(row[j], a[j] + b[j]);
    }

    private void Place(Span<int> row, int i, int state)
    {
        foreach (var orientation in orientationsByX[i])
        {
            if (states.Has(state, orientation.Type))
                row[orientation.Y] = Math.Max(row[orientation.Y], values[orientation.Type]);
        }
    }

    private void CutAcrossY(Span<int> row, int i, StatePair[] ways)
    {
        var back = backward[ways[0].Whole];
        back[^1] = row[0];
        for (var j = 1; j < row.Length; j++)
        {
            var best = Math.Max(row[j], row[j - 1]);
            foreach (var pair in ways)
                best = Math.Max(best, grid.Y.IsDense ? BestDense(j, pair, i) : BestSum(grid.Y.Rest[j], pair, i));
            row[j] = back[^(j + 1)] = best;
        }
    }

    private int BestSum(int[] rest, StatePair pair, int i)
    {
        var best = 0;
        var first = Row(pair.First, i);
        var second = Row(pair.Second, i);
        for (var k = 0; k < rest.Length; k++)
            best = Math.Max(best, first[k + 1] + second[rest[k]]);
        return best;
    }

    // Every length is a point, so the rests lie in a row, backwards.
    private int BestDense(int j, StatePair pair, int i)
    {
        var first = Row(pair.First, i).Slice(1, j / 2);
        var second = backward[pair.Second].AsSpan(columns - j, j / 2);
        var (best, k) = (0, 0);
        if (first.Length >= Vector<int>.Count)
        {
            var most = Vector<int>.Zero;
            for (; k <= first.Length - Vector<int>.Count; k += Vector<int>.Count)
                most = Vector.Max(most, new Vector<int>(first[k..]) + new Vector<int>(second[k..]));
            for (var lane = 0; lane < Vector<int>.Count; lane++)
                best = Math.Max(best, most[lane]);
        }
        for (; k < first.Length; k++)
            best = Math.Max(best, first[k] + second[k]);
        return best;
    }

    private Span<int> Row(int state, int i) => table[state].AsSpan(i * columns, columns);
}
