using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets.Writing;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Clearing;

/// <summary>
/// Writes a tree of least sizes as a layout of a stock with bad places, so that no part and no leftover worth keeping touches
/// one. Of several divisions the one is taken whose leftovers are worth most: with the bad wood cut away first, from either end
/// or edge, or with the parts laid around it.
/// </summary>
internal sealed class ClearWriter
{
    // Bad places up to which what lies beyond a first cut is divided in several ways too.
    private const int FewBlocks = 2;

    private readonly SheetStock stock;
    private readonly BadWood wood;
    private readonly long highest;
    private readonly LayoutWriter writer;
    private readonly Places places;
    private readonly FreeZones free;

    /// <param name="stock">What is cut.</param>
    /// <param name="wood">Where it is bad.</param>
    /// <param name="highest">A rectangle higher than this is not cut along x, where that can be helped.</param>
    public ClearWriter(SheetStock stock, BadWood wood, long highest)
    {
        (this.stock, this.wood, this.highest) = (stock, wood, highest);
        writer = new(stock, highest);
        places = new(wood);
        free = new(stock, wood, highest);
    }

    /// <summary>True when places are found for all items of the tree.</summary>
    public bool CanWrite(LayoutNode root) => places.Fit(root, wood.Whole) is not null;

    /// <summary>The layout; null where no places are found.</summary>
    public LayoutNode? Write(LayoutNode root) => Best(root, wood.Whole, wood.In(wood.Whole).Count <= FewBlocks ? 2 : 1);

    /// <summary>A row of items that are placed already, with the wood beside them.</summary>
    public LayoutNode WriteRow(IEnumerable<LayoutNode> items) =>
        Row(
            new(LayoutNode.Remnant(0, 0, 0, 0) with { AlongX = true }, wood.Whole, false, [.. items.Select(InPlace)]),
            wood.Whole
        );

    private Placed InPlace(LayoutNode item)
    {
        var zone = new Zone(item.X, item.Y, item.Dx, item.Dy);
        return new(item, zone, true, []) { Item = zone };
    }

    private LayoutNode? Best(LayoutNode node, Zone zone, int depth)
    {
        if (places.Fit(node, zone) is not { } placed)
            return null;
        var best = Lay(placed, zone);
        if (placed.IsClear || depth == 0)
            return best;
        foreach (var (alongX, at, keepsFirst) in Peels(zone))
        {
            var first = zone.Between(alongX, zone.From(alongX), at);
            var second = zone.Between(alongX, at, zone.To(alongX));
            if (Best(node, keepsFirst ? first : second, depth - 1) is not { } inner)
                continue;
            var peeled = free.Divide(keepsFirst ? second : first);
            var other = free.Join(keepsFirst ? [inner, peeled] : [peeled, inner], alongX, zone);
            if (Worth(other).CompareTo(Worth(best)) > 0)
                best = other;
        }

        return best;
    }

    // First cuts that leave all parts on one side, beside each bad place.
    private IEnumerable<(bool AlongX, long At, bool KeepsFirst)> Peels(Zone zone)
    {
        foreach (var block in wood.In(zone))
        foreach (var alongX in (bool[])[true, false])
        {
            if (block.Low(alongX) > zone.From(alongX) && wood.IsStrip(alongX, block.Low(alongX), zone))
                yield return (alongX, block.Low(alongX), true);
            if (wood.Beyond(block, alongX, zone.From(alongX)) is var beyond && beyond < zone.To(alongX))
                yield return (alongX, beyond, false);
        }
    }

    private LayoutNode Lay(Placed placed, Zone zone) =>
        placed.IsClear ? writer.Fill(placed.Node, zone.X, zone.Y, zone.Dx, zone.Dy)
        : placed.Parts.IsEmpty ? Around(placed, zone)
        : Row(placed, zone);

    private LayoutNode Around(Placed item, Zone zone)
    {
        var (across, along) = (Around(item, zone, true), Around(item, zone, false));
        return Worth(across).CompareTo(Worth(along)) >= 0 ? across : along;
    }

    // An item in the midst of a zone, with the cuts beside it one way first, then the other way.
    private LayoutNode Around(Placed item, Zone zone, bool alongX)
    {
        var strip = zone.Between(alongX, item.Item.From(alongX), item.Item.To(alongX));
        var place = LayoutNode.Piece(
            item.Node.Item!.Value,
            item.Node.Turned,
            item.Item.X,
            item.Item.Y,
            item.Item.Dx,
            item.Item.Dy
        );
        var inner = free.Join(Between(place, item.Item, strip, !alongX), !alongX, strip);
        return free.Join(Between(inner, item.Item, zone, alongX), alongX, zone);
    }

    private IEnumerable<LayoutNode> Between(LayoutNode node, Zone place, Zone zone, bool alongX)
    {
        if (place.From(alongX) > zone.From(alongX))
            yield return free.Divide(zone.Between(alongX, zone.From(alongX), place.From(alongX)));
        yield return node;
        if (place.To(alongX) < zone.To(alongX))
            yield return free.Divide(zone.Between(alongX, place.To(alongX), zone.To(alongX)));
    }

    private LayoutNode Row(Placed row, Zone zone)
    {
        var (alongX, nodes, at) = (row.Node.AlongX, new List<LayoutNode>(), zone.From(row.Node.AlongX));
        for (var i = 0; i < row.Parts.Length; )
        {
            var start = row.Parts[i].From(alongX);
            if (start > at)
                nodes.Add(free.Divide(zone.Between(alongX, at, start)));
            var last = Together(row, i, zone);
            var next = last + 1 < row.Parts.Length ? row.Parts[last + 1].From(alongX) : zone.To(alongX);
            at = row.Parts[i].IsClear ? ClearEnd(zone, alongX, start, row.Parts[last].To(alongX), next) : row.Parts[i].To(alongX);
            nodes.Add(Lay(row.Parts.AsSpan()[i..(last + 1)], alongX, zone.Between(alongX, start, at)));
            i = last + 1;
        }

        if (at < zone.To(alongX))
            nodes.Add(free.Divide(zone.Between(alongX, at, zone.To(alongX))));
        return free.Join(nodes, alongX, zone);
    }

    // The last of the children from one on that lie side by side on clear wood: what is free beside them is looked at as one.
    private int Together(Placed row, int first, Zone zone)
    {
        var (alongX, last) = (row.Node.AlongX, first);
        while (
            row.Parts[first].IsClear
            && last + 1 < row.Parts.Length
            && row.Parts[last + 1].IsClear
            && row.Parts[last + 1].From(alongX) == row.Parts[last].To(alongX)
            && wood.IsClear(zone.Between(alongX, row.Parts[first].From(alongX), row.Parts[last + 1].To(alongX)))
        )
            last++;
        return last;
    }

    // How far clear wood reaches behind a row, at most to what comes next.
    private long ClearEnd(Zone zone, bool alongX, long start, long end, long next)
    {
        var whole = zone.Between(alongX, start, next);
        return wood.IsClear(whole) ? next : Math.Max(end, wood.Before(whole, alongX, next));
    }

    private LayoutNode Lay(ReadOnlySpan<Placed> parts, bool alongX, Zone zone)
    {
        if (parts.Length == 1)
            return Lay(parts[0], zone);
        var children = new LayoutNode[parts.Length];
        for (var i = 0; i < children.Length; i++)
            children[i] = parts[i].Node;
        return writer.Fill(LayoutNode.Row(alongX, [.. children]), zone.X, zone.Y, zone.Dx, zone.Dy);
    }

    // Crosscuts that are too long for the saw count against a division before all leftovers count for it.
    private (int, double) Worth(LayoutNode node) => (-TooHigh(node), LeftoverValue.OfAll(stock, node));

    private int TooHigh(LayoutNode node) =>
        (node.AlongX && node.Children.Length > 1 && node.Dy > highest ? 1 : 0) + node.Children.Sum(TooHigh);
}
