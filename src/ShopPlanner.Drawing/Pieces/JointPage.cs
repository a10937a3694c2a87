using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>The page of a joint's section: places along and across the joint, in millimetres, become spots. Up stays up; of the
/// others, the width and the depth run as in the views.</summary>
internal sealed class JointPage
{
    /// <summary>Of figures.</summary>
    public const double Type = 9;

    private const double LeftRoom = 34,
        BelowRoom = 30,
        Margin = 8,
        GrainSpacing = 4.5,
        HatchSpacing = 4;
    private const string Steel = "#CDD3D8";

    private readonly JointScene scene;
    private readonly bool alongIsAcrossPage;
    private readonly Stretch along;
    private readonly Stretch across;
    private readonly double scale;
    private readonly double x0;
    private readonly double y0;
    private readonly ImmutableArray<Shape>.Builder shapes = ImmutableArray.CreateBuilder<Shape>();

    /// <summary>A page that shows this part of the section.</summary>
    public JointPage(JointScene scene, Stretch along, Stretch across, double width, double height)
    {
        (this.scene, this.along, this.across) = (scene, along, across);
        var up = scene.Along == Axis.Z || scene.Across == Axis.Z ? Axis.Z : Axis.Y;
        alongIsAcrossPage = scene.Along != up;
        var (wide, high) = alongIsAcrossPage ? (along.Size, across.Size) : (across.Size, along.Size);
        scale = Math.Min((width - LeftRoom - Margin) / wide, (height - BelowRoom - Margin) / high);
        (x0, y0) = (
            LeftRoom + ((width - LeftRoom - Margin - (wide * scale)) / 2),
            Margin + ((height - Margin - BelowRoom + (high * scale)) / 2)
        );
    }

    /// <summary>What has been drawn.</summary>
    public ImmutableArray<Shape> Shapes => shapes.ToImmutable();

    /// <summary>What is shown along the joint.</summary>
    public Stretch Along => along;

    /// <summary>What is shown across it.</summary>
    public Stretch Across => across;

    /// <summary>Page units for a length.</summary>
    public double Of(double mm) => mm * scale;

    /// <summary>A spot on the page.</summary>
    public Spot Put(double a, double b) =>
        alongIsAcrossPage
            ? new(x0 + ((a - along.From) * scale), y0 - ((b - across.From) * scale))
            : new(x0 + ((b - across.From) * scale), y0 - ((a - along.From) * scale));

    /// <summary>A rectangle on the page.</summary>
    public Box At(Stretch a, Stretch b)
    {
        var (one, other) = (Put(a.From, b.From), Put(a.To, b.To));
        var (x, y) = (Math.Min(one.X, other.X), Math.Min(one.Y, other.Y));
        return new(x, y, Math.Abs(one.X - other.X), Math.Abs(one.Y - other.Y));
    }

    /// <summary>Wood cut through: end grain hatched, long grain and plies as fine lines; where it runs on beyond the drawing, it
    /// ends at a break line.</summary>
    public void Wood(PiecePart part, PartCopy copy, Stretch a, Stretch b)
    {
        var (shownA, shownB) = (a.Shared(along), b.Shared(across));
        if (shownA.Size <= 0 || shownB.Size <= 0)
            return;
        var box = At(shownA, shownB);
        Add(new Patch(Fill.Wood, box, RoleTint.Of(part.Material)));
        Grain(part, copy, box);
        Edge(a.From < along.From, shownA.From, shownB, isAlong: true);
        Edge(a.To > along.To, shownA.To, shownB, isAlong: true);
        Edge(b.From < across.From, shownB.From, shownA, isAlong: false);
        Edge(b.To > across.To, shownB.To, shownA, isAlong: false);
    }

    /// <summary>A hole, or wood that has been taken away.</summary>
    public void Hollow(Stretch a, Stretch b)
    {
        var box = At(a.Shared(along), b.Shared(across));
        Add(new Patch(Fill.Paper, box), new Patch(Fill.Paper, box), new Frame(Stroke.Thin, box));
    }

    /// <summary>A hollow of any outline.</summary>
    public void Outlined(params ReadOnlySpan<(double A, double B)> corners)
    {
        Add(new Face(Spots(corners), "", 0, Stroke.Thin, Fill.Paper));
    }

    /// <summary>Wood of any outline, in its part's tint.</summary>
    public void Tinted(PiecePart part, params ReadOnlySpan<(double A, double B)> corners) =>
        Add(new Face(Spots(corners), RoleTint.Of(part.Material), 0, Stroke.Thin));

    /// <summary>Something of metal.</summary>
    public void Metal(params ReadOnlySpan<(double A, double B)> corners) => Add(new Face(Spots(corners), Steel, 0, Stroke.Thin));

    /// <summary>A screw with a countersunk head.</summary>
    /// <param name="a">Of its head, along.</param>
    /// <param name="b">Of its head, across.</param>
    /// <param name="da">Direction it points in, along.</param>
    /// <param name="db">Direction it points in, across; both together one long.</param>
    /// <param name="length">Millimetres.</param>
    /// <param name="diameter">Of the shank.</param>
    public void Screw(double a, double b, double da, double db, double length, double diameter)
    {
        (double A, double B) Place(double on, double off) => (a + (da * on) - (db * off), b + (db * on) + (da * off));
        var (r, head) = (diameter / 2, diameter);
        Metal(
            Place(0, -head),
            Place(0, head),
            Place(head * 0.8, r),
            Place(length - (diameter * 1.5), r),
            Place(length, 0),
            Place(length - (diameter * 1.5), -r),
            Place(head * 0.8, -r)
        );
        var pitch = Math.Max(diameter * 0.7, 3 / scale);
        for (var on = length * 0.4; on < length - (diameter * 1.6); on += pitch)
            Line(Stroke.Thin, Place(on, -r * 1.35), Place(on + (pitch * 0.45), r * 1.35));
    }

    /// <summary>A line.</summary>
    public void Line(Stroke stroke, (double A, double B) from, (double A, double B) to) =>
        Add(new Line(stroke, Put(from.A, from.B), Put(to.A, to.B)));

    /// <summary>Dimension of a stretch along the joint.</summary>
    public void Measure(Stretch a, string words) => Dimension(a, words, alongIsAcrossPage, At(along, across));

    /// <summary>Dimension of a stretch across the joint.</summary>
    public void MeasureAcross(Stretch b, string words) => Dimension(b, words, !alongIsAcrossPage, At(along, across));

    /// <summary>The letter of a part's kind, in it.</summary>
    public void Ring(PiecePart part, PartCopy copy, double a, double b) =>
        Add(new Marked(copy.Mark, [new RingMark(Put(a, b), part.Id, Type)]));

    /// <summary>Any shapes.</summary>
    public void Add(params ReadOnlySpan<Shape> more) => shapes.AddRange(more);

    private void Dimension(Stretch stretch, string words, bool below, Box window)
    {
        var (from, to) = below
            ? (Coordinate(stretch.From, true), Coordinate(stretch.To, true))
            : (Coordinate(stretch.To, false), Coordinate(stretch.From, false));
        if (from > to)
            (from, to) = (to, from);
        var wide = Lettering.Typeface.Width(words, Lettering.Weight.Medium, Type) + 5;
        var fits = wide <= to - from;
        if (below && fits)
            Add(new Dimension(Run.Across, from, to, window.Bottom + 15, window.Bottom, words, Type) { IsAbove = true });
        else if (below)
            Add(new Dimension(Run.Across, from, to, window.Bottom + 9, window.Bottom, words, Type));
        else if (fits)
            Add(new Dimension(Run.Up, from, to, window.X - 9, window.X, words, Type));
        else
            Add(
                new Dimension(Run.Up, from, to, window.X - 9, window.X, "", Type),
                new Caption(new(window.X - 14, (from + to) / 2), words, Type, Anchor.End, Lettering.Weight.Medium)
            );
    }

    private double Coordinate(double mm, bool x)
    {
        var spot = alongIsAcrossPage == x ? Put(mm, across.From) : Put(along.From, mm);
        return x ? spot.X : spot.Y;
    }

    private ImmutableArray<Spot> Spots(ReadOnlySpan<(double A, double B)> corners)
    {
        var spots = ImmutableArray.CreateBuilder<Spot>(corners.Length);
        foreach (var (a, b) in corners)
            spots.Add(Put(a, b));
        return spots.MoveToImmutable();
    }

    private void Grain(PiecePart part, PartCopy copy, Box box)
    {
        if (part.Material.Form == MaterialForm.Board && copy.Along == scene.Normal)
        {
            Add(new Hatch(Stroke.EndGrain, box, HatchSpacing));
            return;
        }

        // A sheet shows its plies, a board the lines of its length.
        var run =
            part.Material.Form == MaterialForm.Board ? copy.Along
            : copy.Flat == scene.Along ? scene.Across
            : scene.Along;
        var flatWise = run == scene.Along == alongIsAcrossPage;
        var (start, end) = flatWise ? (box.Y, box.Bottom) : (box.X, box.Right);
        for (var at = start + (GrainSpacing / 2); at < end - 1; at += GrainSpacing)
            Add(
                flatWise
                    ? new Line(Stroke.Grain, new(box.X, at), new(box.Right, at))
                    : new Line(Stroke.Grain, new(at, box.Y), new(at, box.Bottom))
            );
    }

    private void Edge(bool isBreak, double at, Stretch other, bool isAlong)
    {
        (double A, double B) Place(double on, double off) => isAlong ? (at + off, on) : (on, at + off);
        if (!isBreak)
        {
            Line(Stroke.Outline, Place(other.From, 0), Place(other.To, 0));
            return;
        }

        var (m, z) = (other.Middle, 3 / scale);
        (double A, double B)[] spots =
        [
            Place(other.From, 0),
            Place(m - z, 0),
            Place(m - (z / 2), z),
            Place(m + (z / 2), -z),
            Place(m + z, 0),
            Place(other.To, 0),
        ];
        Add(new Polyline(Stroke.Thin, Spots(spots), Closed: false));
    }
}
