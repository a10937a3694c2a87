using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>
/// Isometric view from the front, the right and above. Parts are painted from the farthest to the nearest, so that what is
/// covered disappears; drawn apart, each part is moved away from the middle and carries its mark in a ring.
/// </summary>
internal sealed class SlantView(Piece piece, PieceRoom room, string? highlight, StepCast? cast = null)
{
    private const double Margin = 8;
    private static readonly double[] Wider = [0.7, 1.1, 1.6];
    private static readonly Dictionary<string, string> NoBays = [];
    private static readonly double[] Shades = [0.05, 0.16, 0];

    private readonly ImmutableArray<ShownPart> parts = cast?.Parts ?? ShownPart.Of(piece);

    /// <summary>The parts where they are.</summary>
    /// <param name="title">Read aloud.</param>
    /// <param name="picks">What can be chosen on a page; null for a drawing that is only looked at.</param>
    public LineDrawing Whole(string title, PiecePicks? picks = null) => Draw(title, new Layout(this, room, 0), [], picks);

    /// <summary>The parts moved apart, as little as lets each be pointed at; where even the widest hides one, it has no
    /// mark.</summary>
    /// <param name="title">Read aloud.</param>
    /// <param name="picks">What can be chosen on a page, bays apart; null for a drawing that is only looked at.</param>
    public LineDrawing Exploded(string title, PiecePicks? picks = null)
    {
        foreach (var apart in Wider)
        {
            var layout = new Layout(this, room, apart);
            var marks = new SlantMarks(
                layout.Solids,
                room,
                layout.Scale,
                layout.Put,
                layout.Page,
                part => cast is null || !cast.IsFaint(part)
            );
            if (marks.Missing == 0 || apart == Wider[^1])
                return Draw(title, layout, marks.Draw(), picks is null ? null : picks with { Bays = NoBays });
        }

        throw new InvalidOperationException("there is no way to draw the parts apart");
    }

    private LineDrawing Draw(string title, Layout layout, IEnumerable<Shape> marks, PiecePicks? picks)
    {
        var wood = layout.Solids.Select(one => new Marked(one.Part.Copy.Mark, Faces(one, layout.Put)));
        var drawn = picks is null ? wood : new SlantPicks(picks, piece, layout.Solids, layout.Put).Among([.. wood]);
        var chosen = layout
            .Solids.Where(one => one.Part.Is(highlight) || (cast is not null && cast.IsHandled(one.Part)))
            .Select(one => new Marked(one.Part.Copy.Mark, Edges(one, layout.Put)));
        return new(
            title,
            cast?.Description
                ?? FormattableString.Invariant($"{piece.Name} from the front, the right and above; {parts.Length} parts."),
            room.Width,
            layout.Page.Bottom + Margin,
            [.. drawn, .. chosen, .. marks]
        );
    }

    // Where the parts stand and how large they are drawn.
    private sealed class Layout
    {
        private readonly Box around;
        private readonly double left;

        public Layout(SlantView view, PieceRoom room, double apart)
        {
            Solids = PaintOrder.Of([.. view.parts.Select(part => new Placed(part, view.Corners(part, apart)))]);
            around = PieceScale.Around(Solids.SelectMany(one => one.Hexagon));
            var (width, beside) = (room.Width, apart > 0 ? Callouts.Column(room.RingType) : 0);
            Scale = PieceScale
                .Fit(around.Width, around.Height, width - (2 * (Margin + beside)), room.Height - (2 * Margin), whole: false)
                .PerMm;
            left = (width - (around.Width * Scale)) / 2;
            Page = new(left - beside, Margin, (around.Width * Scale) + (2 * beside), around.Height * Scale);
        }

        public ImmutableArray<Placed> Solids { get; }

        public double Scale { get; }

        public Box Page { get; }

        public Spot Put(Spot spot) => new(left + ((spot.X - around.X) * Scale), Margin + ((spot.Y - around.Y) * Scale));
    }

    private double[] Corners(ShownPart part, double apart)
    {
        var (x, y, z) = Apart(part, apart);
        var box = part.Box;
        return
        [
            PieceScale.Mm(box.X) + x,
            PieceScale.Mm(box.Y) + y,
            PieceScale.Mm(box.Z) + z,
            PieceScale.Mm(box.EndX) + x,
            PieceScale.Mm(box.EndY) + y,
            PieceScale.Mm(box.EndZ) + z,
        ];
    }

    private (double X, double Y, double Z) Apart(ShownPart part, double apart)
    {
        if (cast?.Moves is not { } moves)
            return (apart * FromMiddle(part, Axis.X), apart * FromMiddle(part, Axis.Y), apart * FromMiddle(part, Axis.Z));
        var (x, y, z) = moves.Shift(part.Copy.Mark);
        var wider = apart / Wider[0];
        return (x * wider, y * wider, z * wider);
    }

    private double FromMiddle(ShownPart part, Axis axis) =>
        (PieceScale.Mm(part.Box.Start(axis)) + PieceScale.Mm(part.Box.End(axis)) - PieceScale.Mm(piece.Outside.Extent(axis))) / 2;

    private ImmutableArray<Shape> Faces(Placed one, Func<Spot, Spot> put)
    {
        var isFaint = cast is not null && cast.IsFaint(one.Part);
        var (tint, edge) = isFaint ? (StepCast.Faint, Stroke.Grain) : (one.Part.Tint, Stroke.Thin);
        return
        [
            .. one.Painted.Select(face => new Face([.. face.Spots.Select(put)], tint, isFaint ? 0 : Shades[face.Side], edge)),
        ];
    }

    private static ImmutableArray<Shape> Edges(Placed one, Func<Spot, Spot> put) =>
        [.. one.Painted.Select(face => new Polyline(Stroke.NextCut, [.. face.Spots.Select(put)], Closed: true))];
}
