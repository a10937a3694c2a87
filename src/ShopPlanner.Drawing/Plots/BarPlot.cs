using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Plots;

/// <summary>How a bar is filled, told apart without colour too.</summary>
public enum BarFill
{
    /// <summary>With a tint, as wood and money that went into something.</summary>
    Plain,

    /// <summary>Hatched, as waste is.</summary>
    Hatched,

    /// <summary>With a dotted edge, as what is kept.</summary>
    Dotted,
}

/// <summary>A bar.</summary>
/// <param name="Label">What it is about; cut off where it is too long.</param>
/// <param name="Value">How long it is, zero or more.</param>
/// <param name="Figure">The value as people read it.</param>
public sealed record Bar(string Label, double Value, string Figure);

/// <summary>Draws bars below one another, all to one scale from zero, each with its label above and its figure at its
/// end.</summary>
public static class BarPlot
{
    private const double Text = 13,
        LabelHeight = 18,
        BarHeight = 14,
        Between = 8,
        Gap = 6,
        Edge = 1,
        HatchSpacing = 6;

    private const string Tint = "#E9D9B8";

    /// <summary>Returns the plot.</summary>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="bars">From top to bottom, one or more.</param>
    /// <param name="fill">Of all bars.</param>
    /// <param name="width">Of the plot, in page units.</param>
    public static LineDrawing Draw(string title, IReadOnlyList<Bar> bars, BarFill fill, double width)
    {
        ArgumentNullException.ThrowIfNull(bars);
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var figures = bars.Max(bar => Typeface.Width(bar.Figure, Weight.Bold, Text));
        var most = bars.Max(bar => bar.Value);
        var room = width - figures - Gap - (2 * Edge);
        var top = 0.0;
        foreach (var bar in bars)
        {
            var label = TextFit.Shorten(TextFit.Clean(bar.Label), Weight.Regular, Text, width - Gap);
            shapes.Add(new Caption(new(Edge + Gap, top + (LabelHeight / 2)), label, Text));
            var box = new Box(Edge, top + LabelHeight, most > 0 ? room * bar.Value / most : 0, BarHeight);
            shapes.AddRange(Filled(box, fill));
            shapes.Add(new Caption(new(box.Right + Gap, box.Centre.Y), bar.Figure, Text, Weight: Weight.Bold));
            top += LabelHeight + BarHeight + Between;
        }

        shapes.Add(new Line(Stroke.Thin, new(Edge, 0), new(Edge, top - Between)));
        return new(title, Describe(bars), width, top, shapes.ToImmutable());
    }

    private static IEnumerable<Shape> Filled(Box box, BarFill fill)
    {
        if (box.Width <= 0)
            yield break;
        if (fill != BarFill.Hatched)
            yield return new Patch(Fill.Wood, box, Tint);
        if (fill == BarFill.Hatched)
            yield return new Hatch(Stroke.Waste, box, HatchSpacing);
        yield return new Frame(fill == BarFill.Dotted ? Stroke.Keep : Stroke.Outline, box);
    }

    private static string Describe(IEnumerable<Bar> bars) =>
        string.Join("; ", bars.Select(bar => $"{TextFit.Clean(bar.Label)}: {bar.Figure}")) + ".";
}
