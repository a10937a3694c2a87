using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;
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

/// <summary>A view straight at one side, to scale: outlines thick, what is covered dashed, the clear sizes in a chain next to the
/// outline and the outside size beyond it, each part that is seen with its mark.</summary>
internal sealed class FlatView
{
    private readonly Piece piece;
    private readonly ViewFrom side;
    private readonly PieceRoom room;
    private readonly PieceScale scale;
    private readonly Spot corner;
    private readonly ImmutableArray<SeenPart> parts;

    /// <summary>Sees the parts.</summary>
    /// <param name="piece">What.</param>
    /// <param name="shown">Its parts.</param>
    /// <param name="side">From where.</param>
    /// <param name="room">Says how large the type is.</param>
    /// <param name="scale">How large the drawing is.</param>
    /// <param name="corner">Of the piece's outline, at the lower left.</param>
    public FlatView(Piece piece, ImmutableArray<ShownPart> shown, ViewFrom side, PieceRoom room, PieceScale scale, Spot corner)
    {
        (this.piece, this.side, this.room, this.scale, this.corner) = (piece, side, room, scale, corner);
        var places = shown.OrderByDescending(Near).Select(part => (Part: part, Box: Place(part.Box))).ToList();
        parts =
        [
            .. places.Select(
                (one, i) => new SeenPart(one.Part, one.Box, Uncovered.Of(one.Box, places.Skip(i + 1).Select(other => other.Box)))
            ),
        ];
    }

    /// <summary>The axis across the drawing.</summary>
    public static Axis Across(ViewFrom side) => side == ViewFrom.Right ? Axis.Y : Axis.X;

    /// <summary>The axis up the drawing.</summary>
    public static Axis Up(ViewFrom side) => side == ViewFrom.Above ? Axis.Y : Axis.Z;

    /// <summary>The piece's outline.</summary>
    public Box Outline => Place(piece.Outside);

    /// <summary>Room that dimensions of both rows take beside the outline, figures included.</summary>
    public static double DimensionRoom(double type) => Overall(type) + (type * 1.5);

    /// <summary>The wood, the edges that are covered, and the parts that stand out.</summary>
    public IEnumerable<Shape> Wood(string? highlight)
    {
        foreach (var part in parts)
            yield return new Marked(part.Mark, NotchedFace.Wood(part, Notch(part), side));
        foreach (var shape in HiddenEdges.Of(parts, Tongues()))
            yield return shape;
        foreach (var part in parts.Where(part => part.Part.Is(highlight)))
            yield return new Marked(part.Mark, [NotchedFace.Edge(Stroke.NextCut, part, Notch(part), side)]);
    }

    // What is cut out of a part, on the page: as deep as it is drawn to the right, as high as it is drawn upward.
    private Box? Notch(SeenPart part)
    {
        if (part.Part.Copy.ToeNotch is not { } notch)
            return null;
        var (deep, high) = (scale.Of(notch.Deep), scale.Of(notch.High));
        return new(part.Place.X, part.Place.Bottom - high, deep, high);
    }

    /// <summary>The marks: in the part where there is room, else beside the drawing.</summary>
    /// <param name="right">The page's x at which the column of rings ends.</param>
    /// <param name="top">The page's y at which the row of rings begins.</param>
    public IEnumerable<Shape> Marks(double right, double top)
    {
        var (size, outline, half) = (room.RingType, Outline, Callouts.Column(room.RingType) / 2);
        var seen = parts
            .Where(part => part.IsSeen)
            .Select(part => (Part: part, Free: Uncovered.Roomiest(part.Free)!.Value))
            .ToList();
        var rings = seen.Select(one => (one.Part, Ring: Ring(one.Part, one.Free))).Where(one => one.Ring is not null).ToList();
        var kinds = rings.Select(one => one.Part.Part.Part.Id).ToHashSet();
        var (beside, above) = (new List<Callout>(), new List<Callout>());
        foreach (var (part, free) in seen.Where(one => Ring(one.Part, one.Free) is null).OrderByDescending(one => one.Free.Right))
        {
            var (toTop, toRight) = (free.Y - outline.Y, outline.Right - free.Right);
            if (free.Height > free.Width || toTop < toRight / 2)
                above.Add(new(part.Mark, part.Mark, new(free.Centre.X, free.Y + Math.Min(8, free.Height / 3))));
            else if (toRight < outline.Width / 4 || kinds.Add(part.Part.Part.Id))
                beside.Add(new(part.Mark, part.Mark, new(free.Right - Math.Min(8, free.Width / 3), free.Centre.Y)));
            kinds.Add(part.Part.Part.Id);
        }

        var downTo = Math.Max(outline.Bottom, outline.Y + 30);
        return
        [
            .. Callouts.Down(beside, right - half + 6, outline.Y, downTo, size),
            .. Callouts.Along(above, top + (RingMark.HeightOf(size) / 2), outline.X - 10, outline.Right + 10, size),
            .. rings.Select(one => new Marked(one.Part.Mark, [one.Ring!])),
        ];
    }

    /// <summary>The dimensions across the drawing, below it.</summary>
    public IEnumerable<Shape> Below()
    {
        var (outline, axis, type, bottom) = (Outline, Across(side), room.Type, Outline.Bottom);
        var chain = Chain(axis).ToList();
        foreach (var (span, words) in chain)
            yield return new Dimension(
                Run.Across,
                outline.X + scale.Of(span.From),
                outline.X + scale.Of(span.To),
                bottom + Nearest(type),
                bottom,
                words,
                Lesser(type)
            );
        var at = bottom + (chain.Count > 0 ? Overall(type) : Nearest(type));
        yield return new Dimension(
            Run.Across,
            outline.X,
            outline.Right,
            at,
            bottom,
            PieceScale.Figure(piece.Outside.Extent(axis), piece.Unit),
            type
        );
    }

    /// <summary>The dimensions up the drawing, at its left.</summary>
    public IEnumerable<Shape> Left()
    {
        var (outline, axis, type) = (Outline, Up(side), room.Type);
        var chain = Chain(axis).ToList();
        foreach (var (span, words) in chain)
            yield return new Dimension(
                Run.Up,
                outline.Bottom - scale.Of(span.To),
                outline.Bottom - scale.Of(span.From),
                outline.X - Nearest(type),
                outline.X,
                words,
                Lesser(type)
            );
        var at = outline.X - (chain.Count > 0 ? Overall(type) : Nearest(type));
        yield return new Dimension(
            Run.Up,
            outline.Y,
            outline.Bottom,
            at,
            outline.X,
            PieceScale.Figure(piece.Outside.Extent(axis), piece.Unit),
            type
        );
    }

    private static double Nearest(double type) => type * 1.4;

    private static double Overall(double type) => type * 3.5;

    private static double Lesser(double type) => type * 0.88;

    // A size that is too short for its figure is left to the other views. Clear sizes stand in parentheses, as what is given for
    // reference: the thicknesses between them are not in the chain, which does not add up then (ASME Y14.5, from memory).
    private IEnumerable<(Span Span, string Words)> Chain(Axis axis) =>
        ClearSizes
            .Along(piece, [.. parts.Select(part => part.Part)], axis)
            .Select(span => (span, Words(span)))
            .Where(one => Typeface.Width(one.Item2, Weight.Medium, Lesser(room.Type)) + 4 <= scale.Of(one.span.Size));

    private string Words(Span span)
    {
        var figure = PieceScale.Figure(span.Size, piece.Unit);
        return span.IsClear ? $"({figure})" : figure;
    }

    // Distance of a part's near face from the eye: the least is the nearest.
    private long Near(ShownPart part) =>
        side switch
        {
            ViewFrom.Front => part.Box.Y.Ticks,
            ViewFrom.Right => -part.Box.EndX.Ticks,
            _ => -part.Box.EndZ.Ticks,
        };

    private RingMark? Ring(SeenPart part, Box free)
    {
        var (long_, high) = (RingMark.WidthOf(part.Mark, room.RingType) + 2, RingMark.HeightOf(room.RingType) + 2);
        return free.Width >= long_ && free.Height >= high ? new(free.Centre, part.Mark, room.RingType)
            : free.Height >= long_ && free.Width >= high ? new(free.Centre, part.Mark, room.RingType, Upward: true)
            : null;
    }

    private IEnumerable<(string Mark, Box Box)> Tongues()
    {
        var boxes = parts.ToDictionary(part => part.Mark, part => part.Part.Copy.Box);
        return piece
            .Joints.Where(joint => joint.Depth.IsPositive)
            .Select(joint => (joint.From, Shared: boxes[joint.From].Shared(boxes[joint.Into])))
            .Where(one => one.Shared is not null)
            .Select(one => (one.From, Place(one.Shared!.Value)));
    }

    private Box Place(Solid box)
    {
        var (across, up) = (Across(side), Up(side));
        return new(
            corner.X + scale.Of(box.Start(across)),
            corner.Y - scale.Of(box.End(up)),
            scale.Of(box.Extent(across)),
            scale.Of(box.Extent(up))
        );
    }
}

/// <summary>A part as it is seen in a flat view.</summary>
/// <param name="Part">The part.</param>
/// <param name="Place">On the page.</param>
/// <param name="Free">What of it is not covered by nearer parts.</param>
internal sealed record SeenPart(ShownPart Part, Box Place, IReadOnlyList<Box> Free)
{
    // What shows through a gap tells nothing of a part.
    private const double Slit = 4,
        Tell = 0.15;

    public string Mark => Part.Copy.Mark;

    /// <summary>Whether enough of it shows to point at.</summary>
    public bool IsSeen =>
        Uncovered.Roomiest(Free) is { } free
        && (Math.Min(free.Width, free.Height) > Slit || free.Width * free.Height > Tell * Place.Width * Place.Height);
}
