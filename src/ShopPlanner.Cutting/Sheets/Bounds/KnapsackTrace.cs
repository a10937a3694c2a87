namespace ShopPlanner.Cutting.Sheets.Bounds;

/// <summary>Finds, from the worth of all rectangles, a layout that is worth as much as a rectangle.</summary>
/// <param name="grid">The rectangles.</param>
/// <param name="states">What is counted.</param>
/// <param name="values">Of one piece of each type.</param>
/// <param name="table">For each state, of all rectangles, by x and then y.</param>
internal sealed class KnapsackTrace(CutGrid grid, CountStates states, int[] values, int[][] table)
{
    private readonly int[] counts = new int[values.Length];

    /// <summary>Pieces of each type.</summary>
    public int[] Pieces(int i, int j)
    {
        Trace(states.Count - 1, i, j);
        return counts;
    }

    private int Worth(int state, int i, int j) => table[state][(i * grid.Y.Count) + j];

    private void Trace(int state, int i, int j)
    {
        var most = Worth(state, i, j);
        if (most == 0)
            return;
        while (Worth(state, i - 1, j) == most)
            i--;
        while (Worth(state, i, j - 1) == most)
            j--;
        var isFound =
            IsPiece(state, i, j, most)
            || Array.Exists(states.Ways[state], p => IsCutAcrossX(p, i, j, most) || IsCutAcrossY(p, i, j, most));
        if (!isFound)
            throw new InvalidOperationException($"Nothing explains the worth {most} of rectangle {i}, {j}.");
    }

    private bool IsPiece(int state, int i, int j, int most)
    {
        foreach (var orientation in grid.Orientations)
        {
            if (
                orientation.X > i
                || orientation.Y > j
                || values[orientation.Type] != most
                || !states.Has(state, orientation.Type)
            )
                continue;
            counts[orientation.Type]++;
            return true;
        }
        return false;
    }

    private bool IsCutAcrossX(StatePair pair, int i, int j, int most)
    {
        var rest = grid.X.Rest[i];
        for (var k = 0; k < rest.Length; k++)
        {
            if (Worth(pair.First, k + 1, j) + Worth(pair.Second, rest[k], j) != most)
                continue;
            Trace(pair.First, k + 1, j);
            Trace(pair.Second, rest[k], j);
            return true;
        }
        return false;
    }

    private bool IsCutAcrossY(StatePair pair, int i, int j, int most)
    {
        var rest = grid.Y.Rest[j];
        for (var k = 0; k < rest.Length; k++)
        {
            if (Worth(pair.First, i, k + 1) + Worth(pair.Second, i, rest[k]) != most)
                continue;
            Trace(pair.First, i, k + 1);
            Trace(pair.Second, i, rest[k]);
            return true;
        }
        return false;
    }
}
