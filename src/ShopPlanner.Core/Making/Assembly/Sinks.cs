namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Strongly connected components of a blocking graph that nothing else stops: the least sets that leave together
/// (Tarjan's algorithm).</summary>
internal sealed class Sinks
{
    private readonly int count;
    private readonly Func<int, int, bool> stops;
    private readonly int[] found;
    private readonly int[] low;
    private readonly bool[] open;
    private readonly Stack<int> path = new();
    private readonly List<List<int>> sinks = [];
    private readonly int[] component;
    private int time;
    private int components;

    private Sinks(int count, Func<int, int, bool> stops)
    {
        (this.count, this.stops) = (count, stops);
        (found, low, open, component) = (new int[count], new int[count], new bool[count], new int[count]);
        for (var node = 0; node < count; node++)
            if (found[node] == 0)
                Visit(node);
    }

    /// <summary>Returns them, each with its nodes in order.</summary>
    /// <param name="count">How many nodes there are.</param>
    /// <param name="stops">Whether the first is stopped by the second.</param>
    public static List<List<int>> Of(int count, Func<int, int, bool> stops) => new Sinks(count, stops).sinks;

    private void Visit(int node)
    {
        found[node] = low[node] = ++time;
        path.Push(node);
        open[node] = true;
        for (var next = 0; next < count; next++)
        {
            if (next == node || !stops(node, next))
                continue;
            if (found[next] == 0)
            {
                Visit(next);
                low[node] = Math.Min(low[node], low[next]);
            }
            else if (open[next])
                low[node] = Math.Min(low[node], found[next]);
        }

        if (low[node] == found[node])
            Close(node);
    }

    private void Close(int root)
    {
        components++;
        var nodes = new List<int>();
        int node;
        do
        {
            node = path.Pop();
            open[node] = false;
            component[node] = components;
            nodes.Add(node);
        } while (node != root);
        nodes.Sort();
        if (nodes.TrueForAll(one => IsHeldOnlyBy(one, components)))
            sinks.Add(nodes);
    }

    private bool IsHeldOnlyBy(int node, int own)
    {
        for (var next = 0; next < count; next++)
            if (next != node && stops(node, next) && component[next] != own)
                return false;
        return true;
    }
}
