using System.Collections.Immutable;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>A template of one copy, before like ones are put together.</summary>
/// <param name="Piece">The copy.</param>
/// <param name="View">Its face.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Group">Which row, or what is cut out; empty for neither.</param>
/// <param name="Window">The piece of the face.</param>
/// <param name="Holes">The holes in the window.</param>
/// <param name="Outline">The part's outline.</param>
internal sealed record Sheet(
    Workpiece Piece,
    FaceView View,
    TemplateKind Kind,
    string Group,
    FaceWindow Window,
    ImmutableArray<TemplateHole> Holes,
    ImmutableArray<(double X, double Y)> Outline
)
{
    // To a hundredth of a millimeter: what differs by less is one template. Lengths are whole ticks of 1/320 mm, so none of them
    // falls near to where rounding changes.
    private const double Step = 0.01,
        Aside = 0.37;

    /// <summary>What is drawn on it where it lies in a way: equal for templates that can take each other's place.</summary>
    public string Key(SheetTurn turn)
    {
        var (wide, high) = (Mm(Window.Wide), Mm(Window.High));
        (double X, double Y) Laid(double x, double y)
        {
            var (left, top) = (x - Mm(Window.X), y - Mm(Window.Y));
            return (
                turn is SheetTurn.HalfTurn or SheetTurn.OverSideways ? wide - left : left,
                turn is SheetTurn.HalfTurn or SheetTurn.OverUpward ? high - top : top
            );
        }

        var holes = Holes.Select(hole =>
            Text(Laid(Mm(hole.At.X), Mm(hole.At.Y))) + FormattableString.Invariant($"d{hole.Diameter.Ticks}h{hole.Depth?.Ticks}")
        );
        var lines = Clip.Segments(Outline, Window).Select(line => Line(Laid(line.X, line.Y), Laid(line.EndX, line.EndY)));
        return string.Join(
            ';',
            [Text((wide, high)), .. holes.Order(StringComparer.Ordinal), "|", .. lines.Order(StringComparer.Ordinal)]
        );
    }

    private static string Line((double X, double Y) one, (double X, double Y) other)
    {
        var (a, b) = (Text(one), Text(other));
        return string.CompareOrdinal(a, b) <= 0 ? a + b : b + a;
    }

    private static string Text((double X, double Y) spot) =>
        FormattableString.Invariant($"({Rounded(spot.X)},{Rounded(spot.Y)})");

    private static long Rounded(double at) => (long)Math.Floor((at / Step) + Aside);

    private static double Mm(Length length) => (double)length.Ticks / Length.TicksPerMillimetre;
}
