using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A part in a flat view, less the notch at its lower front corner.</summary>
internal static class NotchedFace
{
    /// <summary>The wood with its outline; from the front, a notch shows by its upper edge.</summary>
    /// <param name="part">The part.</param>
    /// <param name="notch">Its notch as the right side shows it; null where it has none.</param>
    /// <param name="side">From where it is seen.</param>
    public static ImmutableArray<Shape> Wood(SeenPart part, Box? notch, ViewFrom side)
    {
        var place = part.Place;
        if (notch is not { } cut || side == ViewFrom.Above)
            return [new Patch(Fill.Wood, place, part.Part.Tint), new Frame(Stroke.Outline, place)];
        if (side == ViewFrom.Front)
            return
            [
                new Patch(Fill.Wood, place, part.Part.Tint),
                new Frame(Stroke.Outline, place),
                new Line(Stroke.Outline, new(place.X, cut.Y), new(place.Right, cut.Y)),
            ];
        return
        [
            new Patch(Fill.Wood, place with { Height = place.Height - cut.Height }, part.Part.Tint),
            new Patch(Fill.Wood, new(cut.Right, cut.Y, place.Right - cut.Right, cut.Height), part.Part.Tint),
            new Polyline(Stroke.Outline, Corners(place, cut), Closed: true),
        ];
    }

    /// <summary>The outline alone.</summary>
    public static Shape Edge(Stroke stroke, SeenPart part, Box? notch, ViewFrom side) =>
        notch is { } cut && side == ViewFrom.Right
            ? new Polyline(stroke, Corners(part.Place, cut), Closed: true)
            : new Frame(stroke, part.Place);

    private static ImmutableArray<Spot> Corners(Box place, Box cut) =>
        [
            new(place.X, place.Y),
            new(place.Right, place.Y),
            new(place.Right, place.Bottom),
            new(cut.Right, place.Bottom),
            new(cut.Right, cut.Y),
            new(place.X, cut.Y),
        ];
}
