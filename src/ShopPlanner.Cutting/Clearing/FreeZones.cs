using System.Collections.Immutable;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets.Writing;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Clearing;

/// <summary>Divides wood in which no part lies by straight cuts so that the leftovers clear of bad places are worth most. What is
/// not worth a cut stays on the bad wood.</summary>
/// <param name="stock">Says what is worth keeping.</param>
/// <param name="wood">Where it is bad.</param>
/// <param name="highest">A zone higher than this is not crosscut.</param>
internal sealed class FreeZones(SheetStock stock, BadWood wood, long highest)
{
    // Zones looked at in one division, and bad places of a zone up to which every cut beside them is tried.
    private const int MostZones = 400;
    private const int FewBlocks = 3;

    public LayoutNode Divide(Zone zone) => Best(zone, []).Node;

    /// <summary>Nodes side by side as one: those cut the same way are drawn up into it, and neighbors that are not worth keeping
    /// stay together.</summary>
    public LayoutNode Join(IEnumerable<LayoutNode> nodes, bool alongX, Zone zone)
    {
        var row = new List<LayoutNode>();
        foreach (var node in nodes.SelectMany(one => one.Children.Length > 0 && one.AlongX == alongX ? one.Children : [one]))
            if (row.Count > 0 && IsWaste(row[^1]) && IsWaste(node))
                row[^1] = Together(row[^1], node);
            else
                row.Add(node);
        return row.Count == 1 ? row[0] : new(zone.X, zone.Y, zone.Dx, zone.Dy, null, false, alongX, row.ToImmutableArray());
    }

    private (double Value, LayoutNode Node) Best(Zone zone, Dictionary<Zone, (double, LayoutNode)> known)
    {
        var whole = LeftoverValue.Of(stock, zone.Dx, zone.Dy);
        var blocks = wood.In(zone);
        if (blocks.Count == 0)
            return (whole, LayoutNode.Remnant(zone.X, zone.Y, zone.Dx, zone.Dy));
        if (known.TryGetValue(zone, out var before))
            return before;
        var best = (Value: 0.0, Node: Blocked(zone));
        if (whole == 0 || known.Count >= MostZones)
            return best;
        known[zone] = best;
        foreach (var (alongX, at) in Cuts(zone, blocks))
        {
            var first = Best(zone.Between(alongX, zone.From(alongX), at), known);
            var second = Best(zone.Between(alongX, at, zone.To(alongX)), known);
            if (first.Value + second.Value > best.Value)
                best = (first.Value + second.Value, Join([first.Node, second.Node], alongX, zone));
        }

        return known[zone] = best;
    }

    private IEnumerable<(bool AlongX, long At)> Cuts(Zone zone, IReadOnlyList<Block> blocks)
    {
        foreach (var alongX in zone.Dy > highest ? (bool[])[false] : [true, false])
        {
            var before = blocks.Select(block => block.Low(alongX));
            var beyond = blocks.Select(block => wood.Beyond(block, alongX, zone.From(alongX)));
            var cuts = blocks.Count <= FewBlocks ? before.Concat(beyond) : [before.Min(), beyond.Max()];
            foreach (var at in cuts.Distinct())
                if (at > zone.From(alongX) && wood.IsStrip(alongX, at, zone))
                    yield return (alongX, at);
        }
    }

    private bool IsWaste(LayoutNode node) => node.IsRemnant && (node.Blocked || !stock.Keeps(node.Dx, node.Dy));

    private LayoutNode Together(LayoutNode a, LayoutNode b)
    {
        var zone = new Zone(a.X, a.Y, b.EndX - a.X, b.EndY - a.Y);
        return wood.IsClear(zone) ? LayoutNode.Remnant(zone.X, zone.Y, zone.Dx, zone.Dy) : Blocked(zone);
    }

    private static LayoutNode Blocked(Zone zone) => LayoutNode.Remnant(zone.X, zone.Y, zone.Dx, zone.Dy) with { Blocked = true };
}
