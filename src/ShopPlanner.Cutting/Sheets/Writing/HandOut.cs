using System.Collections.Immutable;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Sheets.Writing;

/// <summary>
/// Gives the pieces of a type to the items it stands for. A layout cut several times stays one as long as each of its places
/// can go to one item in all of them; else it is split.
/// </summary>
internal sealed class HandOut(SheetModel model)
{
    private readonly int[] rest = [.. model.Problem.Items.Select(i => i.Demand)];

    /// <summary>Pieces of each item that were not handed out.</summary>
    public ImmutableArray<int> Rest() => [.. rest];

    public IEnumerable<SheetLayout> Split(int stock, int times, LayoutNode root)
    {
        while (times > 0)
        {
            var together = Together(root, times);
            yield return new SheetLayout(stock, together, Name(root, together));
            times -= together;
        }
    }

    // The most sheets that every place can be given to one item in.
    private int Together(LayoutNode root, int times)
    {
        while (times > 1 && !CanName(root, times))
            times--;
        return times;
    }

    private bool CanName(LayoutNode root, int times)
    {
        var kept = (int[])rest.Clone();
        var possible = Places(root).All(type => Take(type, times) >= 0);
        kept.CopyTo(rest, 0);
        return possible;
    }

    private static IEnumerable<int> Places(LayoutNode node) => node.Item is { } type ? [type] : node.Children.SelectMany(Places);

    private int Take(int type, int times)
    {
        foreach (var item in model.Types[type].Members)
        {
            if (rest[item] < times)
                continue;
            rest[item] -= times;
            return item;
        }
        return -1;
    }

    private LayoutNode Name(LayoutNode node, int times)
    {
        if (node.Item is not { } type)
            return node with { Children = [.. node.Children.Select(c => Name(c, times))] };
        var item = Take(type, times);
        return node with { Item = item, Turned = node.Dx != model.Problem.Items[item].Dx };
    }
}
