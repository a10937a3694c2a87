namespace ShopPlanner.Core.Making.Assembly;

/// <summary>How many parts a graph of joints is in, and into how many more it falls when one node is gone (articulation
/// points, by depth-first search).</summary>
internal sealed class Hubs
{
    private readonly Dictionary<Unit, HashSet<Unit>> joined;
    private readonly Dictionary<Unit, int> found = [];
    private readonly Dictionary<Unit, int> low = [];
    private readonly Dictionary<Unit, int> cuts = [];

    public Hubs(Dictionary<Unit, HashSet<Unit>> joined)
    {
        this.joined = joined;
        foreach (var root in joined.Keys.Where(unit => !found.ContainsKey(unit)))
        {
            Count++;
            // A root with one branch falls into nothing more; one without any is gone whole.
            var branches = Visit(root, null);
            cuts[root] = Math.Max(0, branches - 1);
        }
    }

    /// <summary>Parts that hang together.</summary>
    public int Count { get; }

    /// <summary>Parts more than before when this one is gone.</summary>
    public int Cuts(Unit unit) => cuts[unit];

    /// <summary>Parts that hang together once those are gone.</summary>
    public static int Pieces(Dictionary<Unit, HashSet<Unit>> joined, HashSet<Unit> gone)
    {
        var (seen, count) = (new HashSet<Unit>(gone), 0);
        var open = new Stack<Unit>();
        foreach (var unit in joined.Keys)
        {
            if (!seen.Add(unit))
                continue;
            count++;
            open.Push(unit);
            while (open.TryPop(out var next))
                foreach (var other in joined[next])
                    if (seen.Add(other))
                        open.Push(other);
        }

        return count;
    }

    // Returns how many branches hang on it alone, seen from where the search came.
    private int Visit(Unit unit, Unit? from)
    {
        found[unit] = low[unit] = found.Count;
        var branches = 0;
        foreach (var next in joined[unit])
        {
            if (next == from)
                continue;
            if (found.TryGetValue(next, out var before))
            {
                low[unit] = Math.Min(low[unit], before);
                continue;
            }

            Visit(next, unit);
            low[unit] = Math.Min(low[unit], low[next]);
            if (from is null || low[next] >= found[unit])
                branches++;
        }

        cuts[unit] = branches;
        return branches;
    }
}
