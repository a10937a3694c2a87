using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>From where a piece is seen.</summary>
internal enum ViewFrom
{
    /// <summary>From the front.</summary>
    Front,

    /// <summary>From the right.</summary>
    Right,

    /// <summary>From above, the front at the foot of the drawing.</summary>
    Above,
}

/// <summary>A view straight at one side, to scale, with dimensions: outlines thick, what is covered dashed, the clear sizes of the bays
/// in a chain next to the outline and the outside size beyond it.</summary>
internal sealed class FlatView(Piece piece, ViewFrom side, double width, double height, string? highlight)
{
    private const double Left = 74, Below = 58, Margin = 12, Chain = 16, Overall = 38, Type = 10.5;
    private const int MostHidden = 24;

    private readonly ImmutableArray<ShownPart> parts = ShownPart.Of(piece);
    private double scale;
    private double x0;
    private double y0;

    public LineDrawing Draw(string title)
    {
        var (across, up) = (PieceScale.Mm(Extent(Across)), PieceScale.Mm(Extent(Up)));
        scale = PieceScale.Fit(across, up, width - Left - Margin, height - Below - Margin);
        (x0, y0) = (Left, Margin + (up * scale));
        var high = y0 + Below;
        return new(title, Describe(), Left + (across * scale) + Margin, high, [.. Wood(), .. Hidden(), .. Dimensions()]);
    }

    private Axis Across => side == ViewFrom.Right ? Axis.Y : Axis.X;

    private Axis Up => side == ViewFrom.Above ? Axis.Y : Axis.Z;

    private Length Extent(Axis axis) => piece.Outside.Extent(axis);

    // Distance of a part's near face from the eye: the least is the nearest.
    private long Near(ShownPart part) => side switch
    {
        ViewFrom.Front => part.Box.Y.Ticks, ViewFrom.Right => -part.Box.EndX.Ticks, _ => -part.Box.EndZ.Ticks,
    };

    private IEnumerable<Shape> Wood() => parts.OrderByDescending(Near).Select(part => new Marked(part.Copy.Mark,
    [
        new Patch(Fill.Wood, Place(part.Box), part.Tint),
        new Frame(part.Copy.Mark == highlight || part.Part.Id == highlight ? Stroke.NextCut : Stroke.Outline, Place(part.Box)),
    ]));

    private IEnumerable<Shape> Hidden()
    {
        var covered = parts.Where(part => parts.Any(other => Near(other) < Near(part) && Covers(Place(other.Box), Place(part.Box)))).ToList();
        return covered.Count > MostHidden ? [] : covered.Select(part => new Marked(part.Copy.Mark, [new Frame(Stroke.Hidden, Place(part.Box))]));
    }

    private static bool Covers(Shapes.Box cover, Shapes.Box box) =>
        cover.X <= box.X + 0.01 && cover.Y <= box.Y + 0.01 && cover.Right >= box.Right - 0.01 && cover.Bottom >= box.Bottom - 0.01;

    private Shapes.Box Place(Solid box)
    {
        var (u, v) = (PieceScale.Mm(box.Start(Across)) * scale, PieceScale.Mm(box.End(Up)) * scale);
        return new(x0 + u, y0 - v, PieceScale.Mm(box.Extent(Across)) * scale, PieceScale.Mm(box.Extent(Up)) * scale);
    }

    private IEnumerable<Shape> Dimensions()
    {
        var (right, top) = (x0 + (PieceScale.Mm(Extent(Across)) * scale), y0 - (PieceScale.Mm(Extent(Up)) * scale));
        yield return new Dimension(Run.Across, x0, right, y0 + Overall, y0, PieceScale.Figure(Extent(Across), piece.Unit), Type);
        yield return new Dimension(Run.Up, top, y0, x0 - Overall - 10, x0, PieceScale.Figure(Extent(Up), piece.Unit), Type);
        foreach (var (from, to) in Clear(Across))
            yield return new Dimension(Run.Across, x0 + At(from), x0 + At(to), y0 + Chain, y0, PieceScale.Figure(to - from, piece.Unit), Type - 1.5);
        foreach (var (from, to) in Clear(Up))
            yield return new Dimension(Run.Up, y0 - At(to), y0 - At(from), x0 - Chain, x0, PieceScale.Figure(to - from, piece.Unit), Type - 1.5);
    }

    private double At(Length length) => PieceScale.Mm(length) * scale;

    // The innermost bays give the chain; where they overlap along the axis, the first is enough, and none is shown that is too short for its figure.
    private IEnumerable<(Length From, Length To)> Clear(Axis axis)
    {
        var inner = piece.Openings.Where(one => !piece.Openings.Any(other => other.Path.StartsWith(one.Path + ".", StringComparison.Ordinal)));
        var end = Length.FromTicks(long.MinValue / 4);
        foreach (var (from, to) in inner.Select(one => (From: one.Box.Start(axis), To: one.Box.End(axis))).Where(one => one.To > one.From).Distinct().OrderBy(one => one.From).ThenBy(one => one.To))
        {
            if (from < end || At(to - from) < 22) continue;
            end = to;
            yield return (from, to);
        }
    }

    private string Describe() => FormattableString.Invariant(
        $"{piece.Name}: {PieceScale.Figure(Extent(Across), piece.Unit)} by {PieceScale.Figure(Extent(Up), piece.Unit)} {(piece.Unit == LengthUnit.Inch ? "inches" : "millimetres")}, {parts.Length} parts.");
}
