using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Dimensions whose words stay on the page however long they are.</summary>
internal static class CanvasWords
{
    private const double Left = 6,
        Right = 474;

    /// <summary>A dimension from bottom to top; words that do not fit along it stand beside it, within the page.</summary>
    /// <param name="canvas">Where.</param>
    /// <param name="from">Lower end.</param>
    /// <param name="to">Upper end.</param>
    /// <param name="at">Where the line lies.</param>
    /// <param name="edge">Where the outline lies.</param>
    /// <param name="words">The figure.</param>
    public static void High(this Canvas canvas, double from, double to, double at, double edge, string words)
    {
        var wide = Width(words);
        if (wide + 6 <= Math.Abs(to - from))
        {
            canvas.Up(from, to, at, edge, words);
            return;
        }

        canvas.Up(from, to, at, edge, "");
        if (at > edge)
            Put(canvas, Math.Min(at + 7, Right - wide), (from + to) / 2, words, wide);
        else
            Put(canvas, Math.Max(at - 7 - wide, Left), (from + to) / 2, words, wide);
    }

    /// <summary>Words at a spot, moved so that they stay on the page, readable over what lies below.</summary>
    public static void Tell(this Canvas canvas, double x, double y, string words)
    {
        if (words.Length == 0)
            return;
        var wide = Width(words);
        Put(canvas, Math.Clamp(x - (wide / 2), Left, Math.Max(Left, Right - wide)), y, words, wide);
    }

    /// <summary>A length in inches.</summary>
    public static double Inches(Core.Measures.Length length) => (double)length.ToInches();

    private static void Put(Canvas canvas, double x, double y, string words, double wide)
    {
        canvas.Add(new Patch(Fill.Paper, new(x - 2, y - (Canvas.Text * 0.6), wide + 4, Canvas.Text * 1.2)));
        canvas.Say(x, y, words, Anchor.Start, Weight.Medium);
    }

    private static double Width(string words) => Typeface.Width(words, Weight.Medium, Canvas.Text);
}
