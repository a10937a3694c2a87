using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using Solid = ShopPlanner.Core.Designs.Model.Box;

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
/// <param name="Along">The direction in which it is bored.</param>
/// <param name="X">Its middle: from the left.</param>
/// <param name="Y">From the front.</param>
/// <param name="Z">From the floor.</param>
/// <param name="Diameter">How wide it is.</param>
internal sealed record Bore(BoreKind Kind, string Mark, Axis Along, Length X, Length Y, Length Z, Length Diameter)
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
/// The holes of a piece, where the tables of the trade put them: cups of hinges by the height of the door, pins under the loose
/// shelves as they are drawn, screws and dowels along their joints.
/// </summary>
internal static class Bores
{
    // A cup, and the wood left beside it (the drawing of the hinge says the same); a pin, and its row from the edge.
    private static readonly Length CupDiameter = Length.FromMillimetres(35),
        CupEdge = Length.FromMillimetres(5),
        PinDiameter = Length.FromMillimetres(5),
        PinRow = Length.FromMillimetres(37);

    /// <summary>The holes that are bored in a direction.</summary>
    public static IReadOnlyList<Bore> Of(Piece piece, Axis along) =>
        along switch
        {
            Axis.Y => [.. Cups(piece), .. Fasteners(piece, along)],
            Axis.X => [.. Pins(piece), .. Fasteners(piece, along)],
            _ => [.. Fasteners(piece, along)],
        };

    /// <summary>What is measured to holes along an axis: hinge centers up a door, rows of pins from the front.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="side">From where it is seen.</param>
    /// <param name="axis">Across or up the drawing.</param>
    public static IEnumerable<Span> Sizes(Piece piece, ViewFrom side, Axis axis) =>
        (side, axis) switch
        {
            (ViewFrom.Front, Axis.Z) => Doors(piece)
                .Take(1)
                .SelectMany(door => Between(door.Leaf.Z, [.. door.Places.Select(one => door.Leaf.Z + one)], door.Leaf.EndZ)),
            (ViewFrom.Right, Axis.Y) => Shelves(piece)
                .Take(1)
                .SelectMany(one => Between(one.Bay.Y, Across(one.Bay), one.Bay.EndY)),
            _ => [],
        };

    /// <summary>The rows of pins: from where to where in height, and how far back.</summary>
    public static IEnumerable<(Span Up, Length Y)> Rows(Piece piece) =>
        Shelves(piece).SelectMany(one => Across(one.Bay).Select(y => (new Span(one.Bay.Z, one.Bay.EndZ), y))).Distinct();

    /// <summary>Sentences about the holes that are drawn.</summary>
    /// <param name="kinds">Of the holes.</param>
    public static IEnumerable<string> Notes(IReadOnlyCollection<BoreKind> kinds)
    {
        if (kinds.Contains(BoreKind.Cup))
            yield return "Cups 35 mm, centers 22.5 mm from the hinge edge.";
        if (kinds.Contains(BoreKind.Pin))
            yield return "Pin holes 5 mm, rows 37 mm from the front and back of the bay.";
        if (kinds.Contains(BoreKind.Screw))
            yield return "+ marks a screw.";
        if (kinds.Contains(BoreKind.Dowel))
            yield return "× marks a dowel, inside.";
    }

    // The rows of pins in a bay.
    private static Length[] Across(Solid bay) => [bay.Y + PinRow, bay.EndY - PinRow];

    private static IEnumerable<Span> Between(Length from, IReadOnlyList<Length> places, Length to)
    {
        foreach (var place in places.Append(to))
        {
            yield return new(from, place);
            from = place;
        }
    }

    private static IEnumerable<Bore> Cups(Piece piece)
    {
        var centre = Hinges.CupCentre(Working.Given("edge", CupEdge)).Value;
        return Doors(piece)
            .SelectMany(door =>
                door.Places.Select(place => new Bore(
                    BoreKind.Cup,
                    door.Hung,
                    Axis.Y,
                    door.IsLeft ? door.Leaf.X + centre : door.Leaf.EndX - centre,
                    door.Leaf.EndY,
                    door.Leaf.Z + place,
                    CupDiameter
                ))
            );
    }

    // The list of hardware says how many hinges there are in all; where doors of different heights share them, it does not tell
    // how many each has.
    private static IEnumerable<(string Hung, bool IsLeft, Solid Leaf, IReadOnlyList<Length> Places)> Doors(Piece piece)
    {
        var cups = piece.Hardware.Where(one => one.Name.StartsWith("Hinge for", StringComparison.Ordinal) || IsFaceHinge(one));
        var (hinges, leaves) = (cups.Sum(one => one.Quantity), DoorLeaf.Of(piece));
        var marks = leaves.SelectMany(leaf => leaf.Marks).ToHashSet();
        var hung = piece.Joints.Where(one => one.Kind == JointKind.Hinged && marks.Contains(one.From)).ToList();
        if (hung.Count == 0 || hinges == 0 || hinges % hung.Count > 0 || leaves.Select(one => one.Box.Dz).Distinct().Count() > 1)
            yield break;
        var boxes = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, copy => copy.Box);
        var count = Working.Looked("Hinges", hinges / hung.Count, new WordFigure(""), Hinges.MakerSheet);
        foreach (var joint in hung)
        {
            var leaf = leaves.First(one => one.Marks.Contains(joint.From)).Box;
            var (into, middle) = (boxes[joint.Into], leaf.X + leaf.EndX);
            yield return (
                joint.From,
                into.X + into.EndX < middle,
                leaf,
                Hinges.Places(Working.Given("Height", leaf.Dz), count).Value
            );
        }
    }

    private static bool IsFaceHinge(HardwareItem item) => item.Name.StartsWith("Face-frame hinge", StringComparison.Ordinal);

    private static IEnumerable<Bore> Pins(Piece piece) =>
        Shelves(piece)
            .SelectMany(one =>
                Across(one.Bay)
                    .Where(y => y > one.Shelf.Y && y < one.Shelf.EndY)
                    .Select(y => new Bore(
                        BoreKind.Pin,
                        "",
                        Axis.X,
                        one.Bay.X,
                        y,
                        one.Shelf.Z - Length.FromTicks(PinDiameter.Ticks / 2),
                        PinDiameter
                    ))
            );

    // Loose shelves that lie on pins, each with the bay that it lies in.
    private static IEnumerable<(Solid Shelf, Solid Bay)> Shelves(Piece piece) =>
        piece.Hardware.Any(one => one.Name == "Shelf pin")
            ? piece
                .Parts.Where(part => part is { Assembly: "Shelves", Name: "Shelf" })
                .SelectMany(part => part.Copies)
                .SelectMany(copy =>
                    piece
                        .Openings.Where(bay => bay.Fills.Contains("adjustable-shelves") && bay.Box.Shared(copy.Box) is not null)
                        .Take(1)
                        .Select(bay => (copy.Box, bay.Box))
                )
            : [];

    private static IEnumerable<Bore> Fasteners(Piece piece, Axis along)
    {
        var copies = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark);
        var sizes = new Dictionary<(JointKind, Length, Length, Length, Length), FastenerPlaces?>();
        foreach (var joint in piece.Joints.Where(one => one.Along == along && FastenerPlaces.Has(one.Kind)))
        {
            var (from, into) = (copies[joint.From], copies[joint.Into]);
            if (from.Box.Meeting(into.Box) is not { } face || Seen(joint, from, into) is not { } seen)
                continue;
            var across = Enum.GetValues<Axis>().Where(axis => axis != along).OrderBy(axis => face.Extent(axis)).ToList();
            var (narrow, wide) = (face.Extent(across[0]), face.Extent(across[1]));
            var key = (joint.Kind, from.Box.Extent(along), into.Box.Extent(along), narrow, wide);
            if (!sizes.TryGetValue(key, out var size))
                sizes[key] = size = FastenerPlaces.Of(joint.Kind, key.Item2, key.Item3, narrow, wide);
            foreach (var place in size?.Places ?? [])
                yield return At(seen.Mark, joint.Along, face, across[1], place, size!);
        }
    }

    // A screw goes through the thinner part: it is seen where that one is the nearer to whoever looks from the front, the right
    // or above. A dowel lies within, behind the nearer of both.
    private static PartCopy? Seen(Joint joint, PartCopy from, PartCopy into)
    {
        var along = joint.Along;
        var isFromNearer =
            along == Axis.Y ? from.Box.Start(along) < into.Box.Start(along) : from.Box.End(along) > into.Box.End(along);
        var isThroughInto = into.Box.Extent(along) <= from.Box.Extent(along);
        var nearer = isFromNearer ? from : into;
        return joint.Kind == JointKind.Screwed && isThroughInto == isFromNearer ? null : nearer;
    }

    private static Bore At(string mark, Axis along, Solid face, Axis run, Length place, FastenerPlaces size)
    {
        Length Middle(Axis axis) =>
            axis == run ? face.Start(axis) + place : face.Start(axis) + Length.FromTicks(face.Extent(axis).Ticks / 2);
        return new(size.Kind, mark, along, Middle(Axis.X), Middle(Axis.Y), Middle(Axis.Z), size.Diameter);
    }
}
