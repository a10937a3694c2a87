using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A mark to be shown beside a drawing.</summary>
/// <param name="Mark">Of the copy it belongs to.</param>
/// <param name="Words">In the ring.</param>
/// <param name="At">The spot on the part that the leader ends at.</param>
internal sealed record Callout(string Mark, string Words, Spot At);

/// <summary>
/// Marks in rings beside a drawing, each with a leader that ends in a dot on its part (convention of ISO 128-22, from memory). A
/// leader runs straight out of the drawing and turns to its ring beyond it. The rings stand in the order of their leaders, so
/// that no two leaders cross.
/// </summary>
internal static class Callouts
{
    /// <summary>From the drawing to the rings; leaders turn in it.</summary>
    public const double Bend = 10;

    /// <summary>From the drawing to where leaders turn.</summary>
    public const double Straight = 3;

    private const double Apart = 2.5,
        Dot = 1.6,
        Spare = 4;

    /// <summary>How wide a column of rings is, with the room for leaders.</summary>
    public static double Column(double size) => RingMark.WidthOf("A10L", size) + Bend + Spare;

    /// <summary>How high a row of rings is, with the room for leaders.</summary>
    public static double Row(double size) => RingMark.HeightOf(size) + Bend + Apart;

    /// <summary>How many rings find room one below the other.</summary>
    public static int Most(double start, double end, double size) => (int)Math.Max(0, (end - start) / Step(size));

    /// <summary>How much of a row the ring of a mark takes.</summary>
    public static double WidthOf(string mark, double size) => RingMark.WidthOf(mark, size) + Apart;

    /// <summary>Rings one below the other, beside a drawing.</summary>
    /// <param name="callouts">As many as <see cref="Most"/> at most.</param>
    /// <param name="edge">The drawing's edge, from which leaders come.</param>
    /// <param name="away">1 for rings at the right of it, −1 at the left.</param>
    /// <param name="start">Where the column may begin.</param>
    /// <param name="end">Where it must end.</param>
    /// <param name="size">Of the letters.</param>
    public static IEnumerable<Shape> Down(
        IReadOnlyList<Callout> callouts,
        double edge,
        int away,
        double start,
        double end,
        double size
    )
    {
        var shown = callouts.OrderBy(one => one.At.Y).ToList();
        var places = Spread([.. shown.Select(one => one.At.Y)], [.. shown.Select(_ => Step(size))], start, end);
        var (turn, near) = (edge + (away * Straight), edge + (away * Bend));
        return shown.Select(
            (one, i) =>
                Draw(
                    one,
                    new(turn, one.At.Y),
                    new(near, places[i]),
                    new(near + (away * RingMark.WidthOf(one.Words, size) / 2), places[i]),
                    size
                )
        );
    }

    /// <summary>Rings side by side, above a drawing.</summary>
    /// <param name="callouts">Together no wider than the row.</param>
    /// <param name="edge">The drawing's upper edge.</param>
    /// <param name="start">Where the row may begin.</param>
    /// <param name="end">Where it must end.</param>
    /// <param name="size">Of the letters.</param>
    public static IEnumerable<Shape> Along(IReadOnlyList<Callout> callouts, double edge, double start, double end, double size)
    {
        var shown = callouts.OrderBy(one => one.At.X).ToList();
        var places = Spread([.. shown.Select(one => one.At.X)], [.. shown.Select(one => WidthOf(one.Words, size))], start, end);
        var near = edge - Bend;
        return shown.Select(
            (one, i) =>
                Draw(
                    one,
                    new(one.At.X, edge - Straight),
                    new(places[i], near),
                    new(places[i], near - (RingMark.HeightOf(size) / 2)),
                    size
                )
        );
    }

    /// <summary>Where things in a row stand: as near to where they are wanted as they can without touching.</summary>
    /// <param name="wanted">Their middles, from the least to the greatest.</param>
    /// <param name="wide">How much room each takes; together no more than there is.</param>
    /// <param name="start">Where the row may begin.</param>
    /// <param name="end">Where it must end.</param>
    public static double[] Spread(double[] wanted, double[] wide, double start, double end)
    {
        var places = new double[wanted.Length];
        for (var i = 0; i < places.Length; i++)
        {
            var least = i == 0 ? start + (wide[0] / 2) : places[i - 1] + ((wide[i - 1] + wide[i]) / 2);
            places[i] = Math.Max(wanted[i], least);
        }

        for (var i = places.Length - 1; i >= 0; i--)
        {
            var most = i == places.Length - 1 ? end - (wide[i] / 2) : places[i + 1] - ((wide[i] + wide[i + 1]) / 2);
            places[i] = Math.Min(places[i], most);
        }

        return places;
    }

    private static double Step(double size) => RingMark.HeightOf(size) + Apart;

    private static Marked Draw(Callout callout, Spot turn, Spot end, Spot ring, double size) =>
        new(
            callout.Mark,
            [
                new Polyline(Stroke.Leader, [callout.At, turn, end], Closed: false),
                new Frame(Stroke.Ring, new(callout.At.X - (Dot / 2), callout.At.Y - (Dot / 2), Dot, Dot), Dot / 2),
                new RingMark(ring, callout.Words, size),
            ]
        );
}
