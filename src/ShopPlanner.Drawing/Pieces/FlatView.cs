using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A view straight at one side, to scale: outlines thick, what is covered dashed, holes where they are bored, each part
/// that is seen with its mark.</summary>
internal sealed class FlatView
{
    private readonly Sight sight;
    private readonly PieceRoom room;
    private readonly double scale;
    private readonly Spot corner;
    private readonly ImmutableArray<SeenPart> parts;

    /// <summary>Places what is seen on the page.</summary>
    /// <param name="sight">What is seen.</param>
    /// <param name="room">Says how large the type is.</param>
    /// <param name="perMm">Page units for a millimetre.</param>
    /// <param name="corner">Of the piece's outline, at the upper left.</param>
    public FlatView(Sight sight, PieceRoom room, double perMm, Spot corner)
    {
        (this.sight, this.room, scale, this.corner) = (sight, room, perMm, corner);
        parts = [.. sight.Parts.Select(one => one with { Place = Put(one.Place), Free = [.. one.Free.Select(Put)] })];
    }

    /// <summary>The piece's outline.</summary>
    public Box Outline => Put(new(0, 0, sight.Wide, sight.High));

    /// <summary>The wood, the edges that are covered, the holes, and the parts that stand out.</summary>
    /// <param name="highlight">Mark of a copy, or letter of a part; null for none.</param>
    /// <param name="picks">What can be chosen on a page; null on paper.</param>
    public IEnumerable<Shape> Wood(string? highlight, PiecePicks? picks = null)
    {
        var places = picks is null ? null : new PickPlaces(picks, sight, parts, Put);
        foreach (var part in parts)
        {
            foreach (var shape in places?.Before(part) ?? [])
                yield return shape;
            var wood = new Marked(part.Mark, NotchedFace.Wood(part, Notch(part), sight.Side));
            yield return places?.Named(wood, part) ?? wood;
        }

        foreach (var shape in places?.Rest() ?? [])
            yield return shape;
        foreach (var shape in HiddenEdges.Of(parts, Tongues(), room.IsNarrow))
            yield return shape;
        foreach (var shape in BoreDrawing.Of(sight, Put))
            yield return shape;
        foreach (var part in parts.Where(part => part.Part.Is(highlight)))
            yield return new Marked(part.Mark, [NotchedFace.Edge(Stroke.NextCut, part, Notch(part), sight.Side)]);
    }

    /// <summary>The marks: in the part where there is room, else beside the drawing.</summary>
    /// <param name="mayBeside">Whether there is a column for rings at the right.</param>
    /// <param name="mayAbove">Whether there is a row for rings above.</param>
    public FlatMarks Marks(bool mayBeside, bool mayAbove) => new(parts, Outline, room.RingType, mayBeside, mayAbove);

    // What is cut out of a part, on the page: as deep as it is drawn to the right, as high as it is drawn upward.
    private Box? Notch(SeenPart part)
    {
        if (part.Part.Copy.ToeNotch is not { } notch)
            return null;
        var (deep, high) = (PieceScale.Mm(notch.Deep) * scale, PieceScale.Mm(notch.High) * scale);
        return new(part.Place.X, part.Place.Bottom - high, deep, high);
    }

    private IEnumerable<(string Mark, Box Box)> Tongues()
    {
        var boxes = parts.ToDictionary(part => part.Mark, part => part.Part.Copy.Box);
        return sight
            .Piece.Joints.Where(joint => joint.Depth.IsPositive)
            .Select(joint => (joint.From, Shared: boxes[joint.From].Shared(boxes[joint.Into])))
            .Where(one => one.Shared is not null)
            .Select(one => (one.From, Put(sight.Of(one.Shared!.Value))));
    }

    private Box Put(Box box) =>
        new(corner.X + (box.X * scale), corner.Y + (box.Y * scale), box.Width * scale, box.Height * scale);
}
