using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Turns the nodes of a layout, whose sides carry one kerf, into real wood.</summary>
/// <param name="job">The job.</param>
/// <param name="scaleX">Ticks of a node's measure along x.</param>
/// <param name="scaleY">Ticks of a node's measure along y.</param>
internal sealed class WoodWriter(Job job, long scaleX, long scaleY)
{
    private readonly long? widestRip = job.IsLimited ? job.Saw.WidestRip?.Ticks : null;

    public LayoutNode Write(LayoutNode root, CutStock stock) => root.ByStore ? Panels(root, stock) : Real(root, stock)!;

    // What is no wider than a kerf is sawdust.
    private LayoutNode? Real(LayoutNode node, CutStock stock)
    {
        var (dx, dy) = ((node.Dx * scaleX) - job.Kerf, (node.Dy * scaleY) - job.Kerf);
        if (dx <= 0 || dy <= 0)
            return null;
        var (x, y) = (job.StartX(stock) + (node.X * scaleX), job.StartY(stock) + (node.Y * scaleY));
        if (node.Item is { } item)
            return LayoutNode.Piece(item, node.Turned, x, y, dx, dy);
        if (node.IsRemnant)
            return Remnant(node, x, y, dx, dy, stock);
        var children = node.Children.Select(child => Real(child, stock)).OfType<LayoutNode>().ToImmutableArray();
        return FromFirst(new(x, y, dx, dy, null, false, node.AlongX, node.AlongX ? children : Peeled(children)));
    }

    // Where the first child of a row has become sawdust, the row begins with the next.
    private static LayoutNode FromFirst(LayoutNode row) =>
        row.Children.IsEmpty ? row
        : row.AlongX ? row with { X = row.Children[0].X, Dx = row.EndX - row.Children[0].X }
        : row with { Y = row.Children[0].Y, Dy = row.EndY - row.Children[0].Y };

    // Beside bad places a leftover that is kept is cut free on all sides, or the bad wood would stay on it.
    private LayoutNode Remnant(LayoutNode node, long x, long y, long dx, long dy, CutStock stock) =>
        LayoutNode.Remnant(x, y, dx, dy) with
        {
            Blocked = node.Blocked,
            Freed = !node.Blocked && !stock.BadPlaces.IsEmpty && Keeps(dx, dy),
        };

    private bool Keeps(long dx, long dy) => job.Keep.Keeps(job.Material, Length.FromTicks(dx), Length.FromTicks(dy));

    // Beside something wider than the fence opens, waste and leftovers can only be taken off in strips that it does open for.
    private ImmutableArray<LayoutNode> Peeled(ImmutableArray<LayoutNode> rows)
    {
        if (widestRip is not { } widest || !rows.Any(row => row.HasItem && row.Dy > widest))
            return rows;
        return [.. rows.SelectMany(row => row.IsRemnant ? Strips(row, widest) : [row])];
    }

    private IEnumerable<LayoutNode> Strips(LayoutNode row, long widest)
    {
        for (var y = row.Y; y < row.EndY; y += widest + job.Kerf)
        {
            var dy = Math.Min(widest, row.EndY - y);
            yield return row with
            {
                Y = y,
                Dy = dy,
                Freed = row.Freed && Keeps(row.Dx, dy),
            };
        }
    }

    // Each panel reaches to the store's cuts; what becomes of it, if anything remains, lies inside the wood that was left on for
    // their tolerance.
    private LayoutNode Panels(LayoutNode root, CutStock stock)
    {
        var alongX = root.AlongX;
        var panels = ImmutableArray.CreateBuilder<LayoutNode>();
        var start = 0L;
        foreach (var child in root.Children)
        {
            var isLast = panels.Count == root.Children.Length - 1;
            var whole = alongX ? stock.Length.Ticks : stock.Width.Ticks;
            var end = isLast ? whole : Trimmed(child, alongX, stock) + job.Store!.Tolerance.Ticks;
            panels.Add(Panel(Real(child, stock), alongX, start, end, stock));
            start = end + job.Kerf;
        }

        return new(0, 0, stock.Length.Ticks, stock.Width.Ticks, null, false, alongX, panels.ToImmutable()) { ByStore = true };
    }

    private long Trimmed(LayoutNode node, bool alongX, CutStock stock) =>
        alongX
            ? job.StartX(stock) + ((node.X + node.Dx) * scaleX) - job.Kerf
            : job.StartY(stock) + ((node.Y + node.Dy) * scaleY) - job.Kerf;

    private static LayoutNode Panel(LayoutNode? inner, bool alongX, long start, long end, CutStock stock)
    {
        ImmutableArray<LayoutNode> children = inner is null ? [] : [inner];
        return alongX
            ? new(start, 0, end - start, stock.Width.Ticks, null, false, alongX, children)
            : new(0, start, stock.Length.Ticks, end - start, null, false, alongX, children);
    }
}
