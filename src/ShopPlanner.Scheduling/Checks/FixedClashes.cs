using System.Globalization;
using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Checks;

/// <summary>Tasks that are fixed or set to times where they want more together than there is.</summary>
internal static class FixedClashes
{
    public static IEnumerable<string> Of(Network network)
    {
        var placed = network.Nodes.Where(node => End(network, node) is not null).ToList();
        for (var resource = 0; resource < network.Capacity.Length; resource++)
            if (Clash(network, placed, resource) is { } clash)
                yield return clash;
    }

    private static string? Clash(Network network, List<Node> placed, int resource)
    {
        var taken = placed.SelectMany(node => Taken(network, node, resource)).ToList();
        foreach (var minute in taken.Select(one => one.From).Distinct().Order())
        {
            var there = taken.Where(one => one.From <= minute && minute < one.To).ToList();
            var amount = there.Sum(one => (long)one.Amount);
            if (amount > network.Capacity[resource])
                return string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Names(there.Select(one => one.Id))} are fixed to the same time and take {amount} of "
                        + $"'{network.Names[resource]}' together, and there are {network.Capacity[resource]}. Move one of them."
                );
        }

        return null;
    }

    private static string Names(IEnumerable<string> ids) => string.Join(" and ", ids.Distinct().Select(id => $"'{id}'"));

    private static int? End(Network network, Node node) =>
        node.Task.Fixed?.End ?? (node.Task.Begins is { } begins ? network.Axis.End(begins, node.Labor, node.IsSplit) : null);

    private static IEnumerable<(string Id, int From, int To, int Amount)> Taken(Network network, Node node, int resource)
    {
        var (start, end) = (node.Given!.Value, End(network, node)!.Value);
        foreach (var use in node.LaborUses.Where(use => use.Resource == resource))
            yield return (node.Task.Id, start, end, use.Amount);
        foreach (var use in node.HoldUses.Where(use => use.Resource == resource))
            yield return (node.Task.Id, end, end + node.Hold, use.Amount);
    }
}
