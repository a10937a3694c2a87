using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>What a hole is for.</summary>
internal enum BoreKind
{
    /// <summary>The cup of a hinge.</summary>
    Cup,

    /// <summary>A shelf pin.</summary>
    Pin,

    /// <summary>A screw through one part into the other.</summary>
    Screw,

    /// <summary>A dowel.</summary>
    Dowel,
}

/// <summary>A hole in a part.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Mark">Of the copy whose face it is seen in; empty where it is seen in none.</param>
/// <param name="X">Its middle: from the left.</param>
/// <param name="Y">From the front.</param>
/// <param name="Z">From the floor.</param>
/// <param name="Diameter">How wide it is.</param>
internal sealed record Bore(BoreKind Kind, string Mark, Length X, Length Y, Length Z, Length Diameter)
{
    /// <summary>Its middle along an axis.</summary>
    public Length At(Axis axis) =>
        axis switch
        {
            Axis.X => X,
            Axis.Y => Y,
            _ => Z,
        };
}

/// <summary>
/// The holes of a piece, where the steps of work bore them: cups of hinges, pins under the loose shelves as they are drawn,
/// screws and dowels along their joints.
/// </summary>
internal sealed class Bores
{
    // The bits that steps name.
    private static readonly Length CupDiameter = Length.FromMillimetres(35),
        PinDiameter = Length.FromMillimetres(5);

    private readonly PieceHoles holes;
    private readonly ImmutableArray<PinHoles> pins;
    private readonly ImmutableArray<CupHoles> cups;

    /// <summary>Finds them.</summary>
    /// <param name="piece">The piece.</param>
    public Bores(Piece piece)
    {
        holes = new(piece);
        (pins, cups) = ([.. holes.Pins()], [.. holes.Cups()]);
    }

    /// <summary>The holes that are bored in a direction.</summary>
    public IReadOnlyList<Bore> Of(Axis along) =>
        along switch
        {
            Axis.Y => [.. Cups, .. Fasteners(along)],
            Axis.X => [.. Pins, .. Fasteners(along)],
            _ => [.. Fasteners(along)],
        };

    /// <summary>What is measured to holes along an axis: hinge centers up a door, rows of pins from the front.</summary>
    /// <param name="side">From where it is seen.</param>
    /// <param name="axis">Across or up the drawing.</param>
    public IEnumerable<Span> Sizes(ViewFrom side, Axis axis) =>
        (side, axis) switch
        {
            (ViewFrom.Front, Axis.Z) when cups.Select(door => door.Leaf.Dz).Distinct().Count() == 1 => Between(
                cups[0].Leaf.Z,
                cups[0].Places.Select(place => cups[0].Leaf.Z + place),
                cups[0].Leaf.EndZ
            ),
            (ViewFrom.Right, Axis.Y) when pins.Length > 0 => Between(
                pins[0].Bay.Y,
                pins.Where(row => row.Bay == pins[0].Bay).Select(row => row.Y).Distinct().Order(),
                pins[0].Bay.EndY
            ),
            _ => [],
        };

    /// <summary>The rows of pins: from where to where in height, and how far back.</summary>
    public IEnumerable<(Span Up, Length Y)> Rows => pins.Select(row => (new Span(row.Bay.Z, row.Bay.EndZ), row.Y)).Distinct();

    /// <summary>Sentences about the holes that are drawn.</summary>
    /// <param name="kinds">Of the holes.</param>
    public IEnumerable<string> Notes(IReadOnlyCollection<BoreKind> kinds)
    {
        if (kinds.Contains(BoreKind.Cup))
            yield return $"Cups 35 mm, centers {Metric(cups[0].FromEdge)} from the hinge edge.";
        if (kinds.Contains(BoreKind.Pin))
            yield return FromShelf() is { } back
                ? $"Pin holes 5 mm, rows {Metric(back)} from the front and back of the shelf."
                : "Pin holes 5 mm.";
        if (kinds.Contains(BoreKind.Screw))
            yield return "+ marks a screw.";
        if (kinds.Contains(BoreKind.Dowel))
            yield return "× marks a dowel, inside.";
    }

    private IEnumerable<Bore> Cups =>
        cups.SelectMany(door =>
            door.Places.Select(place => new Bore(
                BoreKind.Cup,
                door.Mark,
                door.X,
                door.Leaf.EndY,
                door.Leaf.Z + place,
                CupDiameter
            ))
        );

    private IEnumerable<Bore> Pins =>
        pins.SelectMany(row =>
            row.Shelves.Select(shelf => new Bore(
                BoreKind.Pin,
                "",
                row.X,
                row.Y,
                shelf.Z - Length.FromTicks(PinDiameter.Ticks / 2),
                PinDiameter
            ))
        );

    private IEnumerable<Bore> Fasteners(Axis along) =>
        holes.Fasteners(along).SelectMany(row => Seen(row) is { } mark ? row.Places.Select(place => At(mark, row, place)) : []);

    private static IEnumerable<Span> Between(Length from, IEnumerable<Length> places, Length to)
    {
        foreach (var place in places.Append(to))
        {
            yield return new(from, place);
            from = place;
        }
    }

    // How far the rows are from the edges of the shelves; null where it differs.
    private Length? FromShelf()
    {
        var all = pins.SelectMany(row => row.Shelves.Select(shelf => Length.Min(row.Y - shelf.Y, shelf.EndY - row.Y)));
        return all.Distinct().Take(2).ToArray() is [var only] ? only : null;
    }

    // A screw shows where the part that it goes through is the nearer to whoever looks from the front, the right or above. A
    // dowel lies within, behind the nearer of both.
    private static string? Seen(FastenerHoles row)
    {
        var (along, from, into) = (row.Joint.Along, row.From.Box, row.Into.Box);
        var isFromNearer = along == Axis.Y ? from.Start(along) < into.Start(along) : from.End(along) > into.End(along);
        var nearer = isFromNearer ? row.From.Mark : row.Into.Mark;
        return row.Through is null || row.Through == nearer ? nearer : null;
    }

    private static Bore At(string mark, FastenerHoles row, Length place)
    {
        Length Middle(Axis axis) =>
            row.Face.Start(axis) + (axis == row.Run ? place : Length.FromTicks(row.Face.Extent(axis).Ticks / 2));
        var kind = row.Joint.Kind == JointKind.Dowel ? BoreKind.Dowel : BoreKind.Screw;
        return new(kind, mark, Middle(Axis.X), Middle(Axis.Y), Middle(Axis.Z), row.Diameter);
    }

    private static string Metric(Length length) => LengthFormat.WithUnit(length, LengthUnit.Millimetre);
}
