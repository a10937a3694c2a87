using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>The outline of a copy that lies flat: its length from left to right, its width from the top down, less what is cut
/// out right through its thickness. Its corners are numbered clockwise from the start of both; side <c>i</c> goes from corner
/// <c>i</c> to the next one.</summary>
internal sealed class PartOutline
{
    private readonly PartCopy copy;
    private readonly Length along,
        across;
    private readonly OutlineCut?[] corners = new OutlineCut?[4];
    private readonly List<OutlineCut>[] sides =
    [
        [],
        [],
        [],
        [],
    ];

    private PartOutline(PartCopy copy)
    {
        this.copy = copy;
        (along, across) = (copy.Box.Extent(copy.Along), copy.Box.Extent(copy.Across));
    }

    /// <summary>Path data in millimeters (SVG 1.1); null where nothing is cut out of the outline, or cuts run into each
    /// other.</summary>
    public static string? Path(PartCopy copy) => Drawn(copy)?.Closed();

    /// <summary>The same outline as its corners and arcs, each from where the one before it ends, the last one to where the
    /// first began; none where <see cref="Path"/> is null.</summary>
    public static ImmutableArray<OutlineStep> Steps(PartCopy copy) => Drawn(copy) is { } pen ? [.. pen.Steps] : [];

    private static OutlinePen? Drawn(PartCopy copy)
    {
        var outline = new PartOutline(copy);
        var cuts = copy.Features.Where(outline.IsThrough).ToList();
        return cuts.Count > 0 && cuts.TrueForAll(outline.Add) && Enumerable.Range(0, 4).All(outline.IsApart)
            ? outline.Written()
            : null;
    }

    /// <summary>Holes in its faces: center and radius.</summary>
    public static ImmutableArray<(Length X, Length Y, Length Radius)> Holes(PartCopy copy) =>
        [
            .. copy
                .Features.OfType<Hole>()
                .Where(hole => hole.Face.Axis() == copy.Flat)
                .Select(hole => hole.Axes.First == copy.Along ? (hole.First, hole.Second, hole) : (hole.Second, hole.First, hole))
                .Select(one => (one.Item1, one.Item2, Length.FromTicks(one.hole.Diameter.Ticks / 2))),
        ];

    /// <summary>Whether something is cut out of its outline.</summary>
    public static bool IsCut(PartCopy copy) => copy.Features.Any(new PartOutline(copy).IsThrough);

    private bool IsThrough(PartFeature feature) =>
        feature switch
        {
            Notch notch => notch.Through == copy.Flat,
            Corner corner => corner.Through == copy.Flat,
            Arc arc => BoxSides.Third(arc.Edge.Axis(), arc.Run) == copy.Flat,
            Taper taper => BoxSides.Third(taper.Face.Axis(), taper.End.Axis()) == copy.Flat,
            Bevel bevel => BoxSides.Third(bevel.Edge.Axis(), bevel.Keeps.Axis()) == copy.Flat,
            _ => false,
        };

    private bool Add(PartFeature feature)
    {
        var cut = Room(feature);
        return feature switch
        {
            Corner corner => AddCorner(cut, Side(corner.First), Side(corner.Second)),
            Taper taper => AddCorner(cut, Side(taper.Face), Side(taper.End)),
            Bevel bevel => AddCorner(cut, Side(bevel.Edge), Side(bevel.Keeps.Opposite())),
            Arc arc => AddSide(cut, Side(arc.Edge)),
            _ => AddNotch(cut),
        };
    }

    private OutlineCut Room(PartFeature feature)
    {
        var (room, box) = (feature.Room(copy.Box), copy.Box);
        return new(
            feature,
            room.Start(copy.Along) - box.Start(copy.Along),
            room.End(copy.Along) - box.Start(copy.Along),
            room.Start(copy.Across) - box.Start(copy.Across),
            room.End(copy.Across) - box.Start(copy.Across)
        );
    }

    private int Side(BoxSide side) => side.Axis() == copy.Along ? (side.IsFar() ? 1 : 3) : (side.IsFar() ? 2 : 0);

    private bool AddNotch(OutlineCut cut)
    {
        bool[] touched = [cut.Y == Length.Zero, cut.EndX == along, cut.EndY == across, cut.X == Length.Zero];
        var met = Enumerable.Range(0, 4).Where(side => touched[side]).ToList();
        return met.Count switch
        {
            1 => AddSide(cut, met[0]),
            2 => AddCorner(cut, met[0], met[1]),
            _ => false,
        };
    }

    private bool AddCorner(OutlineCut cut, int one, int other)
    {
        var corner =
            (one + 1) % 4 == other ? other
            : (other + 1) % 4 == one ? one
            : -1;
        if (corner < 0 || corners[corner] is not null)
            return false;
        corners[corner] = cut;
        return true;
    }

    private bool AddSide(OutlineCut cut, int side)
    {
        // A crown that stops short of the ends leaves steps, which no single arc follows.
        if (cut.Feature is Arc { IsHollow: false } && Span(cut, side) != (Length.Zero, Run(side)))
            return false;
        sides[side].Add(cut);
        return true;
    }

    private Length Run(int side) => side % 2 == 0 ? along : across;

    // From where to where along a side, in the direction that it is gone.
    private (Length From, Length To) Span(OutlineCut cut, int side) =>
        side switch
        {
            0 => (cut.X, cut.EndX),
            1 => (cut.Y, cut.EndY),
            2 => (along - cut.EndX, along - cut.X),
            _ => (across - cut.EndY, across - cut.Y),
        };

    private bool IsApart(int side)
    {
        var next = (side + 1) % 4;
        var spans = sides[side].Select(cut => Span(cut, side)).ToList();
        if (IsCrowned(side) && (corners[side] is not null || corners[next] is not null || spans.Count > 1))
            return false;
        foreach (var corner in new[] { corners[side], corners[next] }.OfType<OutlineCut>())
            spans.Add(Span(corner, side));
        spans.Sort();
        return spans.Zip(spans.Skip(1)).All(pair => pair.First.To <= pair.Second.From);
    }

    private OutlinePen Written()
    {
        var pen = new OutlinePen();
        for (var side = 0; side < 4; side++)
        {
            Leave(pen, side);
            foreach (var cut in sides[side].OrderBy(one => Span(one, side).From))
                Along(pen, cut, side);
            Reach(pen, (side + 1) % 4);
        }

        return pen;
    }

    private bool IsCrowned(int side) => sides[side].Exists(cut => cut.Feature is Arc { IsHollow: false });

    // A crown has both corners of its side beneath it.
    private bool IsUnderCrown(int corner) => IsCrowned(corner) || IsCrowned((corner + 3) % 4);

    // Where a side begins: behind what is cut out of its first corner.
    private void Leave(OutlinePen pen, int corner)
    {
        if (IsUnderCrown(corner))
            return;
        if (corner > 0 && corners[corner] is { } cut)
            Around(pen, cut, corner, closes: false);
        else
            pen.To(Cut(corner).End);
    }

    // The path is closed where it began, behind the first corner.
    private void Reach(OutlinePen pen, int corner)
    {
        if (IsUnderCrown(corner) || (corner == 0 && corners[0] is null))
            return;
        pen.To(Cut(corner).Start);
        if (corner == 0)
            Around(pen, corners[0]!, corner, closes: true);
    }

    private void Around(OutlinePen pen, OutlineCut cut, int corner, bool closes)
    {
        var (_, inner, end) = Cut(corner);
        if (cut.Feature is Notch)
            pen.To(inner);
        if (cut.Feature is Corner round)
            pen.Arc(round.Radius, isClockwise: true, end);
        else if (!closes)
            pen.To(end);
    }

    private void Along(OutlinePen pen, OutlineCut cut, int side)
    {
        var (start, first, second, end) = side switch
        {
            0 => ((cut.X, Length.Zero), (cut.X, cut.EndY), (cut.EndX, cut.EndY), (cut.EndX, Length.Zero)),
            1 => ((along, cut.Y), (cut.X, cut.Y), (cut.X, cut.EndY), (along, cut.EndY)),
            2 => ((cut.EndX, across), (cut.EndX, cut.Y), (cut.X, cut.Y), (cut.X, across)),
            _ => ((Length.Zero, cut.EndY), (cut.EndX, cut.EndY), (cut.EndX, cut.Y), (Length.Zero, cut.Y)),
        };
        if (cut.Feature is not Arc arc)
        {
            pen.To(start);
            pen.To(first);
            pen.To(second);
            pen.To(end);
            return;
        }

        pen.To(arc.IsHollow ? start : first);
        pen.Arc(arc.Radius, !arc.IsHollow, arc.IsHollow ? end : second);
    }

    // Where a corner's cut begins, its inner corner, and where it ends; all of them the corner itself where it is whole.
    private ((Length X, Length Y) Start, (Length X, Length Y) Inner, (Length X, Length Y) End) Cut(int corner)
    {
        var (dx, dy) = corners[corner] is { } cut ? (cut.EndX - cut.X, cut.EndY - cut.Y) : (Length.Zero, Length.Zero);
        return corner switch
        {
            0 => ((Length.Zero, dy), (dx, dy), (dx, Length.Zero)),
            1 => ((along - dx, Length.Zero), (along - dx, dy), (along, dy)),
            2 => ((along, across - dy), (along - dx, across - dy), (along - dx, across)),
            _ => ((dx, across), (dx, across - dy), (Length.Zero, across - dy)),
        };
    }
}

/// <summary>What is cut out of an outline, with the least rectangle around it.</summary>
internal sealed record OutlineCut(PartFeature Feature, Length X, Length EndX, Length Y, Length EndY);

/// <summary>One step of an outline.</summary>
/// <param name="X">Where it ends, along.</param>
/// <param name="Y">Where it ends, across.</param>
/// <param name="Radius">Of the arc, at most half a circle, that leads there; null for a straight line.</param>
/// <param name="IsClockwise">Whether the arc turns clockwise, as it is seen with y downward.</param>
internal readonly record struct OutlineStep(Length X, Length Y, Length? Radius, bool IsClockwise);

/// <summary>Writes path data: lines along an axis by one coordinate, and none to where the pen is.</summary>
internal sealed class OutlinePen
{
    private readonly StringBuilder path = new();
    private (Length X, Length Y)? at;

    /// <summary>What was drawn, the start first.</summary>
    public List<OutlineStep> Steps { get; } = [];

    public void To((Length X, Length Y) end)
    {
        if (at is not { } from)
            path.Append(CultureInfo.InvariantCulture, $"M{Text(end.X)} {Text(end.Y)}");
        else if (from == end)
            return;
        else if (from.Y == end.Y)
            path.Append(CultureInfo.InvariantCulture, $"H{Text(end.X)}");
        else if (from.X == end.X)
            path.Append(CultureInfo.InvariantCulture, $"V{Text(end.Y)}");
        else
            path.Append(CultureInfo.InvariantCulture, $"L{Text(end.X)} {Text(end.Y)}");
        at = end;
        Steps.Add(new(end.X, end.Y, null, false));
    }

    public void Arc(Length radius, bool isClockwise, (Length X, Length Y) end)
    {
        var (r, sweep) = (Text(radius), isClockwise ? 1 : 0);
        path.Append(CultureInfo.InvariantCulture, $"A{r} {r} 0 0 {sweep} {Text(end.X)} {Text(end.Y)}");
        at = end;
        Steps.Add(new(end.X, end.Y, radius, isClockwise));
    }

    public string Closed() => path.Append('Z').ToString();

    /// <summary>Millimeters, to six decimals.</summary>
    public static string Text(Length length) => length.ToMillimetres().ToString("0.######", CultureInfo.InvariantCulture);
}
