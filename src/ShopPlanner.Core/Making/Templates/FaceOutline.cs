using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>The outline of a copy as one looks at its face, its curves drawn in short chords.</summary>
internal static class FaceOutline
{
    // How far a chord leaves its arc at most, in millimeters: finer than any line that is printed.
    private const double Sagitta = 0.02;

    /// <summary>The outline, closed: of the whole rectangle where nothing is cut out of it.</summary>
    public static ImmutableArray<(double X, double Y)> Of(FaceView view)
    {
        var steps = PartOutline.Steps(view.Copy);
        if (steps.IsEmpty)
            return Placed([(0, 0), (Mm(view.Wide), 0), (Mm(view.Wide), Mm(view.High)), (0, Mm(view.High))], view);
        var spots = new List<(double X, double Y)>();
        foreach (var step in steps)
            if (step.Radius is { } radius && spots.Count > 0)
                spots.AddRange(Arc(spots[^1], (Mm(step.X), Mm(step.Y)), Mm(radius), step.IsClockwise));
            else
                spots.Add((Mm(step.X), Mm(step.Y)));
        return Placed(spots, view);
    }

    // Outlines are measured across from the start; the view from its top.
    private static ImmutableArray<(double X, double Y)> Placed(IEnumerable<(double X, double Y)> spots, FaceView view) =>
        [.. spots.Select(spot => (spot.X, view.IsFarOnTop ? Mm(view.High) - spot.Y : spot.Y))];

    // An arc of less than half a circle: its center lies at the right hand of the chord where it turns clockwise (y downward).
    private static IEnumerable<(double X, double Y)> Arc(
        (double X, double Y) from,
        (double X, double Y) to,
        double radius,
        bool isClockwise
    )
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var chord = Math.Sqrt((dx * dx) + (dy * dy));
        var height = Math.Sqrt(Math.Max(0, (radius * radius) - (chord * chord / 4))) * (isClockwise ? 1 : -1);
        var centre = (X: ((from.X + to.X) / 2) - (dy / chord * height), Y: ((from.Y + to.Y) / 2) + (dx / chord * height));
        var begin = Math.Atan2(from.Y - centre.Y, from.X - centre.X);
        var sweep = 2 * Math.Asin(Math.Min(1, chord / 2 / radius)) * (isClockwise ? 1 : -1);
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / (2 * Math.Acos(1 - Math.Min(1, Sagitta / radius)))));
        for (var i = 1; i < count; i++)
        {
            var angle = begin + (sweep * i / count);
            yield return (centre.X + (radius * Math.Cos(angle)), centre.Y + (radius * Math.Sin(angle)));
        }

        yield return to;
    }

    private static double Mm(Length length) => (double)length.Ticks / Length.TicksPerMillimetre;
}
