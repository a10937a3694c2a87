using System.Collections.Immutable;
using ShopPlanner.Cutting.Sheets.Writing;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Clearing;

/// <summary>A node of a tree of least sizes with its place.</summary>
/// <param name="Node">The node.</param>
/// <param name="Zone">What it has to itself.</param>
/// <param name="IsClear">True when nothing of the zone is bad: then the node lies at its beginning, and no more is said of what
/// is in it.</param>
/// <param name="Parts">The children in their order along the zone; empty for an item.</param>
internal sealed record Placed(LayoutNode Node, Zone Zone, bool IsClear, ImmutableArray<Placed> Parts)
{
    /// <summary>Where an item lies.</summary>
    public Zone Item { get; init; }

    /// <summary>Where the wood that is wanted begins.</summary>
    public long From(bool alongX) =>
        IsClear ? Zone.From(alongX)
        : Parts.IsEmpty ? Item.From(alongX)
        : Parts.Min(part => part.From(alongX));

    /// <summary>Where the wood that is wanted ends.</summary>
    public long To(bool alongX) =>
        IsClear ? Zone.From(alongX) + Places.Size(Node, alongX)
        : Parts.IsEmpty ? Item.To(alongX)
        : Parts.Max(part => part.To(alongX));
}

/// <summary>
/// Finds places for a tree of least sizes so that no item touches a bad place. A child takes the shortest strip in which it
/// finds its own places; of up to three children every order is tried, so that two or three items in a row are placed whenever
/// they can be.
/// </summary>
internal sealed class Places(BadWood wood)
{
    private const int FewChildren = 3;

    public static long Size(LayoutNode node, bool alongX) => alongX ? node.Dx : node.Dy;

    /// <summary>The node with its places in a zone; null where none were found.</summary>
    public Placed? Fit(LayoutNode node, Zone zone)
    {
        if (node.Dx > zone.Dx || node.Dy > zone.Dy)
            return null;
        if (wood.IsClear(zone))
            return new(node, zone, true, []);
        if (node.Item is not null)
            return FitItem(node, zone);
        return node.Children.Length <= FewChildren
            ? Orders([.. node.Children])
                .Select(order => FitInOrder(node, order, zone))
                .FirstOrDefault(placed => placed is not null)
            : Sorted(node).Select(order => FitAsTheyGo(node, order, zone)).FirstOrDefault(placed => placed is not null);
    }

    private Placed? FitItem(LayoutNode item, Zone zone)
    {
        var blocks = wood.In(zone);
        var rows = Starts(blocks, false, zone.Y);
        foreach (var x in Starts(blocks, true, zone.X))
        foreach (var y in rows)
        {
            var place = new Zone(x, y, item.Dx, item.Dy);
            if (place.To(true) <= zone.To(true) && place.To(false) <= zone.To(false) && wood.IsClear(place))
                return new(item, zone, false, []) { Item = place };
        }

        return null;
    }

    private Placed? FitInOrder(LayoutNode node, List<LayoutNode> order, Zone zone)
    {
        var parts = ImmutableArray.CreateBuilder<Placed>(order.Count);
        var from = zone.From(node.AlongX);
        foreach (var child in order)
        {
            if (Shortest(child, node.AlongX, from, zone) is not { } placed)
                return null;
            parts.Add(placed);
            from = placed.Zone.To(node.AlongX);
        }

        return new(node, zone, false, parts.MoveToImmutable());
    }

    // The first child that loses no wood where the row has come to; else the one that loses least.
    private Placed? FitAsTheyGo(LayoutNode node, List<LayoutNode> order, Zone zone)
    {
        var (alongX, from) = (node.AlongX, zone.From(node.AlongX));
        var parts = ImmutableArray.CreateBuilder<Placed>(order.Count);
        while (order.Count > 0)
        {
            var placed =
                order
                    .Select(child =>
                        Fit(child, zone.Between(alongX, from, Math.Min(from + Size(child, alongX), zone.To(alongX))))
                    )
                    .FirstOrDefault(one => one is not null)
                ?? order
                    .Select(child => Shortest(child, alongX, from, zone))
                    .OfType<Placed>()
                    .MinBy(one => one.Zone.To(alongX) - from - Size(one.Node, alongX));
            if (placed is null)
                return null;
            parts.Add(placed);
            order.Remove(placed.Node);
            from = placed.Zone.To(alongX);
        }

        return new(node, zone, false, parts.ToImmutable());
    }

    private Placed? Shortest(LayoutNode child, bool alongX, long from, Zone zone) =>
        Ends(child, alongX, from, zone)
            .Select(end => Fit(child, zone.Between(alongX, from, end)))
            .FirstOrDefault(placed => placed is not null);

    // A strip ends where the child, or something in it, ends that begins at the strip's beginning or behind a bad place.
    private IEnumerable<long> Ends(LayoutNode child, bool alongX, long from, Zone zone)
    {
        var (size, to) = (Size(child, alongX), zone.To(alongX));
        if (from + size > to)
            return [];
        long[] sizes = [size, .. child.Children.Select(one => Size(one, alongX))];
        return Starts(wood.In(zone.Between(alongX, from, to)), alongX, from)
            .SelectMany(start => sizes.Select(one => start + one))
            .Where(end => end >= from + size && end <= to)
            .Distinct()
            .Order();
    }

    private List<long> Starts(IReadOnlyList<Block> blocks, bool alongX, long from) =>
        [.. blocks.Select(block => wood.Beyond(block, alongX, from)).Append(from).Distinct().Order()];

    private static IEnumerable<List<LayoutNode>> Sorted(LayoutNode node)
    {
        yield return CutOrder.Sorted(node);
        yield return [.. node.Children.OrderByDescending(child => Size(child, node.AlongX))];
        yield return [.. node.Children];
    }

    private static IEnumerable<List<LayoutNode>> Orders(List<LayoutNode> children)
    {
        if (children.Count <= 1)
            yield return children;
        for (var i = 0; i < children.Count && children.Count > 1; i++)
            foreach (var rest in Orders([.. children.Where((_, other) => other != i)]))
                yield return [children[i], .. rest];
    }
}
