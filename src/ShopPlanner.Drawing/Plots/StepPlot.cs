using System.Collections.Immutable;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Plots;

/// <summary>A value on a day.</summary>
/// <param name="Day">Counted from any day, the same for all points.</param>
/// <param name="Value">Zero or more.</param>
/// <param name="Figure">The value as people read it.</param>
/// <param name="IsFull">Whether its dot is full; else a ring.</param>
public sealed record PlotPoint(int Day, double Value, string Figure, bool IsFull);

/// <summary>Points that belong together.</summary>
/// <param name="Name">What they are about.</param>
/// <param name="Points">In order of days, one or more.</param>
public sealed record PlotLine(string Name, ImmutableArray<PlotPoint> Points);

/// <summary>Draws how values change over time: a value holds until the next is known, so lines are steps. Lines are told apart by
/// their dashes. The scale begins at zero.</summary>
public static class StepPlot
{
    /// <summary>Most lines of one plot: more dashes are not told apart.</summary>
    public const int MostLines = 3;

    private const double Text = 12,
        Height = 150,
        Top = 14,
        Bottom = 22,
        KeyHeight = 18,
        KeyLine = 26,
        Gap = 6,
        Dot = 3;

    private const string Tint = "#8A6D3B";

    private static readonly Stroke[] Strokes = [Stroke.Outline, Stroke.Hidden, Stroke.Centre];

    /// <summary>Returns the plot.</summary>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="lines">At most <see cref="MostLines"/>, one or more.</param>
    /// <param name="days">What stands below the first day and below the last.</param>
    /// <param name="width">Of the plot, in page units.</param>
    public static LineDrawing Draw(string title, IReadOnlyList<PlotLine> lines, (string First, string Last) days, double width)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var all = lines.SelectMany(line => line.Points).ToList();
        var highest = all.MaxBy(point => point.Value)!;
        var left =
            Math.Max(Typeface.Width(highest.Figure, Weight.Regular, Text), Typeface.Width("0", Weight.Regular, Text)) + Gap;
        var area = new Box(left, Top, width - left - Gap, Height - Top - Bottom);
        var (first, last) = (all.Min(point => point.Day), all.Max(point => point.Day));
        Spot Place(PlotPoint point) =>
            new(
                last == first ? area.Centre.X : area.X + (area.Width * (point.Day - first) / (last - first)),
                highest.Value > 0 ? area.Bottom - (area.Height * point.Value / highest.Value) : area.Bottom
            );
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(Axes(area, highest.Figure, days));
        for (var i = 0; i < lines.Count; i++)
            shapes.AddRange(Steps([.. lines[i].Points.Select(Place)], lines[i], Strokes[i], area.Right));
        for (var i = 0; i < lines.Count; i++)
            shapes.AddRange(Key(lines[i].Name, Strokes[i], Height + (i * KeyHeight) + (KeyHeight / 2), width));
        return new(title, Describe(lines), width, Height + (lines.Count * KeyHeight), shapes.ToImmutable());
    }

    private static IEnumerable<Shape> Axes(Box area, string highest, (string First, string Last) days)
    {
        yield return new Line(Stroke.Grain, new(area.X, area.Y), new(area.Right, area.Y));
        yield return new Line(Stroke.Thin, new(area.X, area.Y), new(area.X, area.Bottom));
        yield return new Line(Stroke.Thin, new(area.X, area.Bottom), new(area.Right, area.Bottom));
        yield return new Caption(new(area.X - Gap, area.Y), highest, Text, Anchor.End);
        yield return new Caption(new(area.X - Gap, area.Bottom), "0", Text, Anchor.End);
        yield return new Caption(new(area.X, area.Bottom + Text), days.First, Text, Tone: Tone.Faded);
        if (days.Last != days.First)
            yield return new Caption(new(area.Right, area.Bottom + Text), days.Last, Text, Anchor.End, Tone: Tone.Faded);
    }

    private static IEnumerable<Shape> Steps(IReadOnlyList<Spot> spots, PlotLine line, Stroke stroke, double right)
    {
        var corners = new List<Spot> { spots[0] };
        foreach (var spot in spots.Skip(1))
        {
            corners.Add(spot with { Y = corners[^1].Y });
            corners.Add(spot);
        }

        corners.Add(corners[^1] with { X = right });
        yield return new Polyline(stroke, [.. corners], Closed: false);
        foreach (var (spot, point) in spots.Zip(line.Points))
        {
            var box = new Box(spot.X - Dot, spot.Y - Dot, 2 * Dot, 2 * Dot);
            yield return point.IsFull ? new Patch(Fill.Wood, box, Tint, Dot) : new Patch(Fill.Paper, box, Radius: Dot);
            yield return new Frame(Stroke.Outline, box, Dot);
        }
    }

    private static IEnumerable<Shape> Key(string name, Stroke stroke, double y, double width)
    {
        yield return new Line(stroke, new(0, y), new(KeyLine, y));
        yield return new Caption(
            new(KeyLine + Gap, y),
            TextFit.Shorten(TextFit.Clean(name), Weight.Regular, Text, width - KeyLine - Gap),
            Text
        );
    }

    private static string Describe(IEnumerable<PlotLine> lines) =>
        string.Join(
            "; ",
            lines.Select(line => $"{TextFit.Clean(line.Name)}: {string.Join(", ", line.Points.Select(point => point.Figure))}")
        ) + ".";
}
