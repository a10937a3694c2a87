namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Sets of numbers that are joined pair by pair (union-find).</summary>
internal sealed class Clusters
{
    private readonly Dictionary<int, int> parent = [];

    public Clusters(IEnumerable<int> numbers)
    {
        foreach (var number in numbers)
            parent[number] = number;
    }

    /// <summary>Joins two; numbers that it doesn't know are left out.</summary>
    public void Join(int one, int other)
    {
        if (parent.ContainsKey(one) && parent.ContainsKey(other))
            parent[Root(one)] = Root(other);
    }

    /// <summary>The sets, each in order, by their least number.</summary>
    public List<int[]> All() => [.. parent.Keys.GroupBy(Root).Select(same => same.Order().ToArray()).OrderBy(same => same[0])];

    private int Root(int number)
    {
        while (parent[number] != number)
            number = parent[number] = parent[parent[number]];
        return number;
    }
}
