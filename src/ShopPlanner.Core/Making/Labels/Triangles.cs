using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Labels;

/// <summary>Lays the cabinetmaker's triangle across the parts of each assembly.</summary>
internal sealed class Triangles
{
    private readonly Dictionary<string, (Axis Normal, Box Whole)> groups = new(StringComparer.Ordinal);
    private readonly PieceWork work;

    public Triangles(PieceWork work)
    {
        this.work = work;
        foreach (var piece in work.Workpieces.Where(one => !groups.ContainsKey(one.Mark)))
        {
            var together = work.Together(piece);
            if (together.Count < 2)
                continue;
            var (normal, whole) = (Normal(together), together.Select(one => one.Box).Aggregate((a, b) => a.Around(b)));
            foreach (var one in together)
                groups[one.Mark] = (normal, whole);
        }
    }

    /// <summary>The box of what a copy's triangle is drawn across; null for a copy that is joined to none of its
    /// assembly.</summary>
    public Box? Around(Workpiece piece) => groups.TryGetValue(piece.Mark, out var group) ? group.Whole : null;

    /// <summary>The piece of the triangle on a copy.</summary>
    public TrianglePiece? Of(Workpiece piece)
    {
        if (!groups.TryGetValue(piece.Mark, out var group))
            return null;
        var (right, up) = group.Normal switch
        {
            Axis.X => (Axis.Y, Axis.Z),
            Axis.Y => (Axis.X, Axis.Z),
            _ => (Axis.X, Axis.Y),
        };
        // From the left, the front is at the right hand.
        var isTurned = group.Normal == Axis.X && Middle(group.Whole, Axis.X) <= Middle(work.Piece.Outside, Axis.X);
        var (whole, box) = (group.Whole, piece.Box);
        var across = isTurned ? whole.End(right) - box.End(right) : box.Start(right) - whole.Start(right);
        var above = box.Start(up) - whole.Start(up);
        return piece.Copy.Along == up
            ? new(
                new(Length.Zero, Length.Zero, whole.Extent(up), whole.Extent(right)),
                new(above, across, box.Extent(up), box.Extent(right)),
                IsUpright: false
            )
            : new(
                new(Length.Zero, Length.Zero, whole.Extent(right), whole.Extent(up)),
                new(across, whole.Extent(up) - above - box.Extent(up), box.Extent(right), box.Extent(up)),
                IsUpright: true
            );
    }

    // Parts that all lie flat are seen on their faces, as a door or boards of a top; what is a box is seen on the edges of the
    // parts that make it: a case from the front, a drawer from above.
    private static Axis Normal(IReadOnlyList<Workpiece> together)
    {
        Axis[] order = [Axis.Y, Axis.Z, Axis.X];
        var flat = together.Select(one => one.Copy.Flat).Distinct().ToList();
        return flat.Count == 1 ? flat[0] : order.MinBy(axis => together.Count(one => one.Copy.Flat == axis));
    }

    private static Length Middle(Box box, Axis axis) => Length.FromTicks((box.Start(axis).Ticks + box.End(axis).Ticks) / 2);
}
