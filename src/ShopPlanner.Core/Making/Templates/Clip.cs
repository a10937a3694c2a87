using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>Takes from an outline what lies within a rectangle.</summary>
public static class Clip
{
    /// <summary>Returns the pieces of an outline's lines within a window, in millimeters of the face.</summary>
    /// <param name="outline">Corners in order; the last is joined to the first.</param>
    /// <param name="window">The window; lines on its edge are within it.</param>
    public static IEnumerable<(double X, double Y, double EndX, double EndY)> Segments(
        ImmutableArray<(double X, double Y)> outline,
        FaceWindow window
    ) => Segments(outline, Mm(window.X), Mm(window.Y), Mm(window.EndX), Mm(window.EndY));

    /// <summary>Returns the pieces of an outline's lines within a rectangle.</summary>
    public static IEnumerable<(double X, double Y, double EndX, double EndY)> Segments(
        ImmutableArray<(double X, double Y)> outline,
        double x,
        double y,
        double endX,
        double endY
    )
    {
        for (var i = 0; i < outline.Length; i++)
            if (Within(outline[i], outline[(i + 1) % outline.Length], (x, y, endX, endY)) is { } line)
                yield return line;
    }

    // Liang and Barsky's way: how much of the line, from 0 to 1, each side of the rectangle leaves.
    private static (double X, double Y, double EndX, double EndY)? Within(
        (double X, double Y) from,
        (double X, double Y) to,
        (double X, double Y, double EndX, double EndY) box
    )
    {
        var (dx, dy, start, end) = (to.X - from.X, to.Y - from.Y, 0.0, 1.0);
        foreach (
            var (toward, room) in new[]
            {
                (-dx, from.X - box.X),
                (dx, box.EndX - from.X),
                (-dy, from.Y - box.Y),
                (dy, box.EndY - from.Y),
            }
        )
        {
            if (toward == 0 && room < 0)
                return null;
            if (toward < 0)
                start = Math.Max(start, room / toward);
            else if (toward > 0)
                end = Math.Min(end, room / toward);
        }

        return start >= end ? null : (from.X + (start * dx), from.Y + (start * dy), from.X + (end * dx), from.Y + (end * dy));
    }

    private static double Mm(Length length) => (double)length.Ticks / Length.TicksPerMillimetre;
}
