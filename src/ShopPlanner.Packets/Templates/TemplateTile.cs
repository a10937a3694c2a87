using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Packets.Templates;

/// <summary>What one sheet shows of a template: the part's outline with the words of its sides, the holes with their centers, and
/// where the next sheets are joined on.</summary>
internal sealed class TemplateTile
{
    private const double Words = 7,
        Cross = 6,
        FromEnd = 14;

    private readonly PartTemplate template;
    private readonly Tiling tiling;
    private readonly int column,
        row;
    private readonly double fromX,
        fromY;
    private readonly Box shown;

    public TemplateTile(PartTemplate template, Tiling tiling, int column, int row)
    {
        (this.template, this.tiling, this.column, this.row) = (template, tiling, column, row);
        var window = template.Window;
        (fromX, fromY) = (
            tiling.Area.X - Tiling.PointsOf(window.X) - (column * tiling.StepX),
            tiling.Area.Y - Tiling.PointsOf(window.Y) - (row * tiling.StepY)
        );
        var (right, bottom) = (X(Tiling.PointsOf(window.EndX)), Y(Tiling.PointsOf(window.EndY)));
        shown = new(
            tiling.Area.X,
            tiling.Area.Y,
            Math.Min(right, tiling.Area.Right) - tiling.Area.X,
            Math.Min(bottom, tiling.Area.Bottom) - tiling.Area.Y
        );
    }

    /// <summary>All of it.</summary>
    public IEnumerable<Shape> Draw() => [.. Joins(), .. Centres(), .. Blank(), .. Outline(), .. Holes(), .. Sides()];

    private double X(double points) => points + fromX;

    private double Y(double points) => points + fromY;

    private IEnumerable<Shape> Outline() =>
        Clip.Segments(
                template.Outline,
                (shown.X - fromX) / Tiling.Mm,
                (shown.Y - fromY) / Tiling.Mm,
                (shown.Right - fromX) / Tiling.Mm,
                (shown.Bottom - fromY) / Tiling.Mm
            )
            .Select(line => new Line(
                Stroke.Outline,
                new(X(line.X * Tiling.Mm), Y(line.Y * Tiling.Mm)),
                new(X(line.EndX * Tiling.Mm), Y(line.EndY * Tiling.Mm))
            ));

    // The part before anything is cut out of it: what the sheet is laid against.
    private IEnumerable<Shape> Blank()
    {
        if (template.Outline.Length == 4)
            return [];
        var (left, top) = (X(0), Y(0));
        var (right, bottom) = (X(Tiling.PointsOf(template.Wide)), Y(Tiling.PointsOf(template.High)));
        Spot[] corners = [new(left, top), new(right, top), new(right, bottom), new(left, bottom), new(left, top)];
        return Within(corners).Select(line => line with { Stroke = Stroke.Hidden });
    }

    private IEnumerable<Shape> Holes()
    {
        foreach (var (hole, i) in template.Holes.OrderBy(one => one.At.X).ThenBy(one => one.At.Y).Select((one, i) => (one, i)))
        {
            var (x, y) = (X(Tiling.PointsOf(hole.At.X)), Y(Tiling.PointsOf(hole.At.Y)));
            var radius = Tiling.PointsOf(hole.Diameter) / 2;
            var arm = radius + Cross;
            foreach (var line in Within(Round(x, y, radius)))
                yield return line with
                {
                    Stroke = Stroke.Thin,
                };
            if (!shown.Holds(new(x, y)))
                continue;
            foreach (var line in Within([new(x - arm, y), new(x + arm, y)]).Concat(Within([new(x, y - arm), new(x, y + arm)])))
                yield return line with
                {
                    Stroke = Stroke.Thin,
                };
            var number = FormattableString.Invariant($"{i + 1}");
            var at = new Spot(x + (radius * 0.71) + 3, y - (radius * 0.71) - 4);
            if (template.Holes.Length > 1 && shown.Inset(4).Holds(at))
                yield return new Caption(at, number, Words);
        }
    }

    // Where the middle of the part is the reference, it is drawn.
    private IEnumerable<Shape> Centres()
    {
        if (template.Kind != TemplateKind.Pull)
            yield break;
        var (x, y) = (X(Tiling.PointsOf(template.Wide) / 2), Y(Tiling.PointsOf(template.High) / 2));
        foreach (
            var line in Within([new(x, shown.Y), new(x, shown.Bottom)]).Concat(Within([new(shown.X, y), new(shown.Right, y)]))
        )
            yield return line with
            {
                Stroke = Stroke.Centre,
            };
    }

    // Words just within the sides of the part that are on this sheet.
    private IEnumerable<Shape> Sides()
    {
        var (wide, high) = (Tiling.PointsOf(template.Wide), Tiling.PointsOf(template.High));
        foreach (var (y, words, into) in new[] { (Y(0), template.Sides.Top, 1), (Y(high), template.Sides.Bottom, -1) })
            if (y >= shown.Y - 0.01 && y <= shown.Bottom + 0.01 && shown.Height > 3 * Words)
                yield return new Caption(
                    new(shown.X + (shown.Width / 2), y + (into * (Words - 1))),
                    TextFit.Shorten(TextFit.Clean(words), Weight.Regular, Words, shown.Width - 20),
                    Words,
                    Anchor.Middle
                );
        foreach (var (x, words, into) in new[] { (X(0), template.Sides.Left, 1), (X(wide), template.Sides.Right, -1) })
            if (x >= shown.X - 0.01 && x <= shown.Right + 0.01 && shown.Width > 3 * Words)
                yield return new Caption(
                    new(x + (into * (Words - 1)), shown.Y + (shown.Height / 2)),
                    TextFit.Shorten(TextFit.Clean(words), Weight.Regular, Words, shown.Height - 20),
                    Words,
                    Anchor.Middle,
                    Upward: true
                );
    }

    // A dashed line in the middle of what two sheets both show, with a cross near each of its ends: laid cross on cross, the
    // sheets are one.
    private IEnumerable<Shape> Joins()
    {
        foreach (var (join, isBefore) in new[] { (column - 1, true), (column, false) })
            if (join >= 0 && join < tiling.Columns - 1)
            {
                var x = isBefore ? shown.X + (Tiling.Overlap / 2) : tiling.Area.Right - (Tiling.Overlap / 2);
                yield return new Line(Stroke.Hidden, new(x, shown.Y), new(x, shown.Bottom));
                foreach (var (y, name) in Ends(shown.Y, shown.Height))
                foreach (var shape in Register(new(x, y), $"{Letter(join)}{row + 1}{name}"))
                    yield return shape;
            }

        foreach (var (join, isBefore) in new[] { (row - 1, true), (row, false) })
            if (join >= 0 && join < tiling.Rows - 1)
            {
                var y = isBefore ? shown.Y + (Tiling.Overlap / 2) : tiling.Area.Bottom - (Tiling.Overlap / 2);
                yield return new Line(Stroke.Hidden, new(shown.X, y), new(shown.Right, y));
                foreach (var (x, name) in Ends(shown.X, shown.Width))
                foreach (var shape in Register(new(x, y), $"{join + 1}{Letter(column)}{name}"))
                    yield return shape;
            }
    }

    private static IEnumerable<(double At, string Name)> Ends(double from, double room) =>
        room < 4 * FromEnd ? [(from + (room / 2), "")] : [(from + FromEnd, "a"), (from + room - FromEnd, "b")];

    private static string Letter(int join) => ((char)('A' + (join % 26))).ToString();

    private static IEnumerable<Shape> Register(Spot at, string name) =>
        [
            new Line(Stroke.Thin, at with { X = at.X - Cross }, at with { X = at.X + Cross }),
            new Line(Stroke.Thin, at with { Y = at.Y - Cross }, at with { Y = at.Y + Cross }),
            new Frame(Stroke.Thin, new(at.X - (Cross / 2), at.Y - (Cross / 2), Cross, Cross), Cross / 2),
            new Caption(new(at.X + 3, at.Y + Cross + 1), name, 5.5),
        ];

    private static List<Spot> Round(double x, double y, double radius) =>
        [
            .. Enumerable
                .Range(0, 73)
                .Select(i => new Spot(x + (radius * Math.Cos(i * Math.PI / 36)), y + (radius * Math.Sin(i * Math.PI / 36)))),
        ];

    // What of a line through spots lies on this sheet.
    private IEnumerable<Line> Within(IReadOnlyList<Spot> spots) =>
        spots
            .Zip(spots.Skip(1))
            .SelectMany(pair =>
                Clip.Segments(
                        [(pair.First.X, pair.First.Y), (pair.Second.X, pair.Second.Y)],
                        shown.X,
                        shown.Y,
                        shown.Right,
                        shown.Bottom
                    )
                    .Take(1)
            )
            .Select(line => new Line(Stroke.Thin, new(line.X, line.Y), new(line.EndX, line.EndY)));
}
