using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>
/// Isometric view from the front, the right and above. Parts are painted from the farthest to the nearest, so that what is covered
/// disappears; drawn apart, each part is moved away from the middle and carries its mark in a ring.
/// </summary>
internal sealed class SlantView(Piece piece, double width, double height, string? highlight, double apart)
{
    private const double Margin = 16, Type = 9;
    private static readonly double Cos = Math.Cos(Math.PI / 6), Sin = 0.5;

    private readonly ImmutableArray<ShownPart> parts = ShownPart.Of(piece);

    public LineDrawing Draw(string title)
    {
        var solids = PaintOrder.Of([.. parts.Select(part => new Placed(part, Corners(part)))]);
        var around = PieceScale.Around(solids.SelectMany(one => Hexagon(one)));
        var scale = PieceScale.Fit(around.Width, around.Height, width - (2 * Margin), height - (2 * Margin));
        Spot Put(Spot spot) => new(Margin + ((spot.X - around.X) * scale), Margin + ((spot.Y - around.Y) * scale));
        var shapes = solids.Select(one => (Shape)new Marked(one.Part.Copy.Mark, [.. Faces(one).Select(face => face with { Spots = [.. face.Spots.Select(Put)] })]));
        var rings = apart > 0 ? Rings(solids, Put) : [];
        return new(
            title, FormattableString.Invariant($"{piece.Name} from the front, the right and above; {parts.Length} parts."), (around.Width * scale) + (2 * Margin),
            (around.Height * scale) + (2 * Margin), [.. shapes, .. rings]);
    }

    private double[] Corners(ShownPart part)
    {
        double Middle(Axis axis) => (PieceScale.Mm(part.Box.Start(axis)) + PieceScale.Mm(part.Box.End(axis)) - PieceScale.Mm(piece.Outside.Extent(axis))) / 2;
        double Move(Axis axis) => Middle(axis) * apart;
        return
        [
            PieceScale.Mm(part.Box.X) + Move(Axis.X), PieceScale.Mm(part.Box.Y) + Move(Axis.Y), PieceScale.Mm(part.Box.Z) + Move(Axis.Z),
            PieceScale.Mm(part.Box.EndX) + Move(Axis.X), PieceScale.Mm(part.Box.EndY) + Move(Axis.Y), PieceScale.Mm(part.Box.EndZ) + Move(Axis.Z),
        ];
    }

    private static Spot Project(double x, double y, double z) => new((x + y) * Cos, ((x - y) * Sin) - z);

    internal static IEnumerable<Spot> Hexagon(Placed one)
    {
        var c = one.Corners;
        return [Project(c[0], c[1], c[2]), Project(c[3], c[1], c[2]), Project(c[3], c[4], c[2]), Project(c[3], c[4], c[5]), Project(c[0], c[4], c[5]), Project(c[0], c[1], c[5])];
    }

    private IEnumerable<Face> Faces(Placed one)
    {
        var (c, edge) = (one.Corners, one.Part.Copy.Mark == highlight || one.Part.Part.Id == highlight ? Stroke.NextCut : Stroke.Thin);
        Spot P(int x, int y, int z) => Project(c[x], c[y], c[z]);
        yield return new([P(0, 1, 2), P(3, 1, 2), P(3, 1, 5), P(0, 1, 5)], one.Part.Tint, 0.05, edge);
        yield return new([P(3, 1, 2), P(3, 4, 2), P(3, 4, 5), P(3, 1, 5)], one.Part.Tint, 0.16, edge);
        yield return new([P(0, 1, 5), P(3, 1, 5), P(3, 4, 5), P(0, 4, 5)], one.Part.Tint, 0, edge);
    }

    // One ring for each kind of part: its first copy.
    private static IEnumerable<Shape> Rings(IEnumerable<Placed> solids, Func<Spot, Spot> put) => solids
        .GroupBy(one => one.Part.Part.Id).Select(group => group.MinBy(one => one.Part.Copy.Mark.Length)!)
        .Select(one =>
        {
            var c = one.Corners;
            return (Shape)new RingMark(put(Project((c[0] + c[3]) / 2, (c[1] + c[4]) / 2, (c[2] + c[5]) / 2)), one.Part.Part.Id, Type);
        });
}

/// <summary>A part with its corners in millimetres: x, y, z of the near lower left and of the far upper right one.</summary>
internal sealed record Placed(ShownPart Part, double[] Corners);
