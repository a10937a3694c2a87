using System.Globalization;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Layouts;

/// <summary>The number of each cut on its kerf, wherever there is room beside what is written already; the list of cuts names
/// the others.</summary>
internal static class CutNumbers
{
    private static readonly double[] Along = [0.5, 0.25, 0.75, 0.12, 0.88, 0.38, 0.62];

    /// <summary>The numbers.</summary>
    /// <param name="picture">Whose cuts.</param>
    /// <param name="view">Where they lie.</param>
    /// <param name="size">Of the type.</param>
    /// <param name="taken">What is covered already; grows.</param>
    public static IEnumerable<Shape> Draw(LayoutPicture picture, View view, double size, List<Box> taken) =>
        picture.Cuts.SelectMany(cut => Grouped(picture, cut, Draw(cut, view.Of(cut.Kerf), size, taken)));

    private static Shape[] Grouped(LayoutPicture picture, CutPicture cut, Shape[] drawn) =>
        picture.IsLive && drawn.Length > 0 ? [new Marked($"number-{cut.N}", [.. drawn])] : drawn;

    private static Shape[] Draw(CutPicture cut, Box kerf, double size, List<Box> taken)
    {
        var words = cut.N.ToString(CultureInfo.InvariantCulture);
        var wide = Typeface.Width(words, Weight.Medium, size) + 2.4;
        foreach (var part in Along)
        {
            var at =
                kerf.Width < kerf.Height
                    ? new Spot(kerf.Centre.X, kerf.Y + (kerf.Height * part))
                    : new Spot(kerf.X + (kerf.Width * part), kerf.Centre.Y);
            var box = new Box(at.X - (wide / 2), at.Y - (size * 0.5), wide, size);
            if (Math.Max(kerf.Width, kerf.Height) < size * 1.2 || taken.Any(box.Overlaps))
                continue;
            taken.Add(box);
            var tone = cut.State == CutState.Next ? Tone.Chalk : Tone.Faded;
            return [new Patch(Fill.Paper, box, Radius: 1.5), new Caption(at, words, size, Anchor.Middle, Weight.Medium, tone)];
        }

        return [];
    }
}
