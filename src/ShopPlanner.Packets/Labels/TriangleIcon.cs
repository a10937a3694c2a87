using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Labels;

/// <summary>The cabinetmaker's triangle of an assembly, small, with the piece of it that a part carries drawn thick.</summary>
internal static class TriangleIcon
{
    // A very long assembly is drawn shorter, so that its parts can be told apart.
    private const double MostLong = 1.8,
        Thinnest = 0.16;

    /// <summary>Width for a height.</summary>
    public static double WidthOf(TrianglePiece piece, double height) => height * Math.Clamp(Ratio(piece), 1 / MostLong, MostLong);

    /// <summary>The icon in a box.</summary>
    public static IEnumerable<Shape> Draw(TrianglePiece piece, Box box)
    {
        var (x, wide) = Stretch(piece.Copy.X, piece.Copy.Wide, piece.Whole.Wide);
        var (y, high) = Stretch(piece.Copy.Y, piece.Copy.High, piece.Whole.High);
        var part = new Box(box.X + (box.Width * x), box.Y + (box.Height * y), box.Width * wide, box.Height * high);
        yield return new Patch(Fill.Done, part);
        yield return new Frame(Stroke.Dimension, box);
        yield return new Frame(Stroke.Thin, part);
        foreach (var (from, to) in Sides(piece, box))
        {
            yield return new Line(Stroke.Dimension, from, to);
            if (Within(from, to, part) is var (start, end))
                yield return new Line(Stroke.Outline, start, end);
        }
    }

    // A thin part is drawn thicker, toward the middle, so that its piece of the line can be seen.
    private static (double From, double Long) Stretch(Length from, Length size, Length whole)
    {
        var (start, share) = (Share(from, whole), Share(size, whole));
        if (share >= Thinnest)
            return (start, share);
        var middle = start + (share / 2);
        return (Math.Clamp(middle - (Thinnest * middle), 0, 1 - Thinnest), Thinnest);
    }

    private static (Spot From, Spot To)[] Sides(TrianglePiece piece, Box box)
    {
        var (one, other, point) = piece.IsUpright
            ? (new Spot(box.X, box.Bottom), new Spot(box.Right, box.Bottom), new Spot(box.Centre.X, box.Y))
            : (new Spot(box.X, box.Y), new Spot(box.X, box.Bottom), new Spot(box.Right, box.Centre.Y));
        return [(one, other), (other, point), (point, one)];
    }

    private static double Ratio(TrianglePiece piece) => Share(piece.Whole.Wide, piece.Whole.High);

    private static double Share(Length part, Length whole) => (double)part.Ticks / whole.Ticks;

    private static (Spot, Spot)? Within(Spot from, Spot to, Box box)
    {
        var (dx, dy, start, end) = (to.X - from.X, to.Y - from.Y, 0.0, 1.0);
        foreach (
            var (toward, room) in new[]
            {
                (-dx, from.X - box.X),
                (dx, box.Right - from.X),
                (-dy, from.Y - box.Y),
                (dy, box.Bottom - from.Y),
            }
        )
        {
            if (Math.Abs(toward) < 1e-9 && room < -1e-9)
                return null;
            if (toward < -1e-9)
                start = Math.Max(start, room / toward);
            else if (toward > 1e-9)
                end = Math.Min(end, room / toward);
        }

        return start >= end
            ? null
            : (new(from.X + (start * dx), from.Y + (start * dy)), new(from.X + (end * dx), from.Y + (end * dy)));
    }
}
