using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Holes in a flat view: cups dashed at their true size with their centers, rows of pins on a center line, screws and
/// dowels as small crosses.</summary>
internal static class BoreDrawing
{
    private const double Arm = 2.4,
        Over = 2.5,
        LeastPin = 1.3;

    /// <summary>The holes that a view shows.</summary>
    /// <param name="sight">What is seen.</param>
    /// <param name="put">From millimetres to the page.</param>
    public static IEnumerable<Shape> Of(Sight sight, Func<Box, Box> put)
    {
        if (sight.Holes.Any(one => one.Bore.Kind == BoreKind.Pin))
            foreach (var (up, y) in sight.Bores.Rows)
                yield return Row(put(new(PieceScale.Mm(y), sight.High - PieceScale.Mm(up.To), 0, PieceScale.Mm(up.Size))));
        foreach (var (bore, at) in sight.Holes)
        {
            var radius = PieceScale.Mm(bore.Diameter) / 2;
            foreach (var shape in Draw(bore.Kind, put(new(at.X - radius, at.Y - radius, 2 * radius, 2 * radius))))
                yield return shape;
        }
    }

    private static Line Row(Box place) => new(Stroke.Centre, new(place.X, place.Y), new(place.X, place.Bottom));

    private static IEnumerable<Shape> Draw(BoreKind kind, Box place)
    {
        var (centre, radius) = (place.Centre, place.Width / 2);
        return kind switch
        {
            BoreKind.Cup => [new Frame(Stroke.Hidden, place, radius), .. Upright(Stroke.Centre, centre, radius + Over)],
            BoreKind.Pin => [Circle(centre, Math.Max(LeastPin, radius))],
            BoreKind.Screw => Upright(Stroke.Thin, centre, Arm),
            _ => Slanting(centre),
        };
    }

    private static Frame Circle(Spot centre, double radius) =>
        new(Stroke.Thin, new(centre.X - radius, centre.Y - radius, 2 * radius, 2 * radius), radius);

    private static IEnumerable<Shape> Upright(Stroke stroke, Spot at, double arm) =>
        [
            new Line(stroke, new(at.X - arm, at.Y), new(at.X + arm, at.Y)),
            new Line(stroke, new(at.X, at.Y - arm), new(at.X, at.Y + arm)),
        ];

    private static IEnumerable<Shape> Slanting(Spot at) =>
        [
            new Line(Stroke.Thin, new(at.X - Arm, at.Y - Arm), new(at.X + Arm, at.Y + Arm)),
            new Line(Stroke.Thin, new(at.X - Arm, at.Y + Arm), new(at.X + Arm, at.Y - Arm)),
        ];
}
