namespace ShopPlanner.Cutting.Sheets.Exact;

/// <summary>
/// The smallest rectangles that a set of pieces can be cut from, none of which holds another: by width ascending, so by height
/// descending (a shape function, Stockmeyer, Information and Control 57, 1983).
/// </summary>
internal sealed class ShapeFunction(int[] widths, int[] heights)
{
    public int Count => widths.Length;

    public (int W, int H) this[int index] => (widths[index], heights[index]);

    /// <summary>Least width at a height; null when nothing is so low.</summary>
    public int? WidthAt(int height)
    {
        for (var i = 0; i < heights.Length; i++)
        {
            if (heights[i] <= height)
                return widths[i];
        }
        return null;
    }

    /// <summary>Least height at a width; null when nothing is so narrow.</summary>
    public int? HeightAt(int width)
    {
        for (var i = widths.Length - 1; i >= 0; i--)
        {
            if (widths[i] <= width)
                return heights[i];
        }
        return null;
    }

    /// <summary>True when some step lies within.</summary>
    public bool FitsIn(int w, int h) => WidthAt(h) <= w;
}

/// <summary>Collects rectangles and keeps the smallest ones.</summary>
internal sealed class ShapeFunctionBuilder(Func<int, int, bool> fits)
{
    private readonly List<int> widths = [];
    private readonly List<int> heights = [];

    /// <summary>What was collected since the last call; null when nothing was.</summary>
    public ShapeFunction? Take()
    {
        var taken = widths.Count == 0 ? null : new ShapeFunction([.. widths], [.. heights]);
        widths.Clear();
        heights.Clear();
        return taken;
    }

    /// <summary>Side by side along x: every height that one of the two has, with the least width at it.</summary>
    public void AddSideBySide(ShapeFunction a, ShapeFunction b)
    {
        for (var (i, j) = (0, 0); i < a.Count && j < b.Count; )
        {
            var (first, second) = (a[i], b[j]);
            Add(first.W + second.W, Math.Max(first.H, second.H));
            i += first.H >= second.H ? 1 : 0;
            j += second.H >= first.H ? 1 : 0;
        }
    }

    /// <summary>One above the other along y.</summary>
    public void AddStacked(ShapeFunction a, ShapeFunction b)
    {
        for (var (i, j) = (a.Count - 1, b.Count - 1); i >= 0 && j >= 0; )
        {
            var (first, second) = (a[i], b[j]);
            Add(Math.Max(first.W, second.W), first.H + second.H);
            i -= first.W >= second.W ? 1 : 0;
            j -= second.W >= first.W ? 1 : 0;
        }
    }

    public void Add(int w, int h)
    {
        var at = widths.BinarySearch(w);
        at = at >= 0 ? at : ~at - 1;
        if ((at >= 0 && heights[at] <= h) || !fits(w, h))
            return;
        at = at >= 0 && widths[at] == w ? at : at + 1;
        var end = at;
        while (end < heights.Count && heights[end] >= h)
            end++;
        widths.RemoveRange(at, end - at);
        heights.RemoveRange(at, end - at);
        widths.Insert(at, w);
        heights.Insert(at, h);
    }
}
