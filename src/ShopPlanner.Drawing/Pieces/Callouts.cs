using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A mark to be shown beside a drawing.</summary>
/// <param name="Mark">Of the copy it belongs to.</param>
/// <param name="Words">In the ring.</param>
/// <param name="At">The spot on the part that the leader ends at.</param>
internal sealed record Callout(string Mark, string Words, Spot At);

/// <summary>Marks in rings beside a drawing, each with a leader that ends in a dot on its part (convention of ISO 128-22, from
/// memory).</summary>
internal static class Callouts
{
    private const double Apart = 2.5,
        Dot = 1.6;

    /// <summary>How wide a column of rings is.</summary>
    public static double Column(double size) => RingMark.WidthOf("A10L", size) + 14;

    /// <summary>How high a row of rings is.</summary>
    public static double Row(double size) => RingMark.HeightOf(size) + 12;

    /// <summary>Rings one below the other.</summary>
    /// <param name="callouts">Those that do not fit are left out, the last first.</param>
    /// <param name="x">The rings' middle.</param>
    /// <param name="start">Where the column may begin.</param>
    /// <param name="end">Where it must end.</param>
    /// <param name="size">Of the letters.</param>
    public static IEnumerable<Shape> Down(IReadOnlyList<Callout> callouts, double x, double start, double end, double size)
    {
        var step = RingMark.HeightOf(size) + Apart;
        var shown = callouts.Take((int)((end - start) / step)).OrderBy(one => one.At.Y).ToList();
        var places = Spread([.. shown.Select(one => one.At.Y)], [.. shown.Select(_ => step)], start, end);
        return shown.Select((one, i) => Draw(one, new(x, places[i]), size));
    }

    /// <summary>Rings side by side.</summary>
    /// <param name="callouts">Those that do not fit are left out, the last first.</param>
    /// <param name="y">The rings' middle.</param>
    /// <param name="start">Where the row may begin.</param>
    /// <param name="end">Where it must end.</param>
    /// <param name="size">Of the letters.</param>
    public static IEnumerable<Shape> Along(IReadOnlyList<Callout> callouts, double y, double start, double end, double size)
    {
        double Wide(Callout one) => RingMark.WidthOf(one.Words, size) + Apart;
        var room = end - start;
        var shown = callouts.TakeWhile(one => (room -= Wide(one)) >= 0).OrderBy(one => one.At.X).ToList();
        var places = Spread([.. shown.Select(one => one.At.X)], [.. shown.Select(Wide)], start, end);
        return shown.Select((one, i) => Draw(one, new(places[i], y), size));
    }

    // As near to where they are wanted as they can stand without touching.
    private static double[] Spread(double[] wanted, double[] wide, double start, double end)
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

    private static Marked Draw(Callout callout, Spot ring, double size) =>
        new(
            callout.Mark,
            [
                new Line(Stroke.Leader, callout.At, ring),
                new Frame(Stroke.Ring, new(callout.At.X - (Dot / 2), callout.At.Y - (Dot / 2), Dot, Dot), Dot / 2),
                new RingMark(ring, callout.Words, size),
            ]
        );
}
