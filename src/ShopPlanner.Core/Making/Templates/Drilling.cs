using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>A hole in a face of a copy.</summary>
/// <param name="Piece">The copy.</param>
/// <param name="Face">The face it is bored from.</param>
/// <param name="Group">Holes of one group are one template: the row, the hinges.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="X">Its center in the piece.</param>
/// <param name="Y">Its center in the piece.</param>
/// <param name="Z">Its center in the piece.</param>
/// <param name="Diameter">Of the bit.</param>
/// <param name="Depth">From the face; null for one right through.</param>
internal sealed record Drilled(
    Workpiece Piece,
    BoxSide Face,
    string Group,
    TemplateKind Kind,
    Length X,
    Length Y,
    Length Z,
    Length Diameter,
    Length? Depth
)
{
    public Length At(Axis axis) =>
        axis switch
        {
            Axis.X => X,
            Axis.Y => Y,
            _ => Z,
        };
}

/// <summary>Finds the holes that templates are made for, where the steps of the work put them.</summary>
internal static class Drilling
{
    // A pin's hole, and a cup (both also in the steps of the work); the machine screw of a pull, #8-32, takes 3/16 in (from
    // memory).
    private static readonly Length Pin = Length.FromMillimetres(5);
    private static readonly Length Cup = Length.FromMillimetres(35);
    private static readonly Length PullScrew = Length.FromInches(0.1875m);

    /// <summary>All of them.</summary>
    /// <param name="work">The piece.</param>
    /// <param name="pull">From hole to hole of the pulls; nothing for knobs.</param>
    public static IEnumerable<Drilled> Of(PieceWork work, Length pull) =>
        [.. Pins(work), .. Cups(work), .. Featured(work), .. Pulls(work, pull)];

    private static IEnumerable<Drilled> Pins(PieceWork work) =>
        PinRows
            .Of(work)
            .SelectMany(row =>
                PinFamily
                    .Heights(row)
                    .Select(height => new Drilled(
                        row.Piece,
                        BoxSides.Of(Axis.X, row.AtEnd),
                        row.IsFront ? "front row" : "back row",
                        TemplateKind.Pins,
                        row.AtEnd ? row.Piece.Box.EndX : row.Piece.Box.X,
                        row.Y,
                        row.Low + height,
                        Pin,
                        ShelfPins.Depth(Working.Given("side", row.Piece.Box.Dx)).Value
                    ))
            );

    // A cup is bored into the back of a door, from the edge that is hung.
    private static IEnumerable<Drilled> Cups(PieceWork work) =>
        HungDoor
            .All(work)
            .Where(door => door.TakesCups)
            .SelectMany(door =>
                door.Places.Select(place => new Drilled(
                    door.Joint.From,
                    BoxSide.Back,
                    "",
                    TemplateKind.Cups,
                    Hung(door),
                    door.Joint.From.Box.EndY,
                    door.Leaf.Z + place,
                    Cup,
                    door.CupDepth
                ))
            );

    private static Length Hung(HungDoor door)
    {
        var centre = Hinges.CupCentre(HungDoor.Edge).Value;
        return door.IsLeft ? door.Leaf.X + centre : door.Leaf.EndX - centre;
    }

    private static IEnumerable<Drilled> Featured(PieceWork work) =>
        work.Workpieces.SelectMany(piece =>
            piece
                .Copy.Features.OfType<Hole>()
                .Where(hole => hole.Face.Axis() == piece.Copy.Flat)
                .Select(hole =>
                {
                    Length At(Axis axis) =>
                        axis == hole.Axes.First ? piece.Box.Start(axis) + hole.First
                        : axis == hole.Axes.Second ? piece.Box.Start(axis) + hole.Second
                        : hole.Face.IsFar() ? piece.Box.End(axis)
                        : piece.Box.Start(axis);
                    return new Drilled(
                        piece,
                        hole.Face,
                        "",
                        TemplateKind.Holes,
                        At(Axis.X),
                        At(Axis.Y),
                        At(Axis.Z),
                        hole.Diameter,
                        hole.Depth
                    );
                })
        );

    // In the middle of a drawer's front (common practice); what is fixed elsewhere is marked by hand.
    private static IEnumerable<Drilled> Pulls(PieceWork work, Length pull)
    {
        foreach (var front in work.Workpieces.Where(one => one.Part is { Assembly: "Drawer", Name: "Drawer front" }))
        {
            var (x, z) = (Middle(front.Box, Axis.X), Middle(front.Box, Axis.Z));
            var half = Length.FromTicks(pull.Ticks / 2);
            foreach (var at in pull.IsPositive ? [x - half, x - half + pull] : new[] { x })
                yield return new(front, BoxSide.Front, "", TemplateKind.Pull, at, front.Box.Y, z, PullScrew, null);
        }
    }

    private static Length Middle(Box box, Axis axis) => Length.FromTicks((box.Start(axis).Ticks + box.End(axis).Ticks) / 2);
}
