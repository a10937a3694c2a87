using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>
/// Where a flat view can be pressed: a bay on what lies behind it, a part on its wood, a thin part a little beside it too. What
/// lies in front of a bay is pressed before the bay is.
/// </summary>
internal sealed class PickPlaces
{
    // What a finger hits, how far beyond its wood a thin part is hit at most, and a chosen bay's frame within it.
    private const double Target = 44,
        MostBeside = 12,
        Inset = 3;

    private readonly PiecePicks picks;
    private readonly ImmutableArray<SeenPart> parts;
    private readonly ImmutableArray<(Opening Bay, Box Place)> bays;
    private readonly HashSet<string> stops;
    private bool isDone;

    /// <summary>Finds the places.</summary>
    /// <param name="picks">What can be chosen.</param>
    /// <param name="sight">What is seen; bays from the front alone.</param>
    /// <param name="parts">On the page, the farthest first.</param>
    /// <param name="put">From millimetres to the page.</param>
    public PickPlaces(PiecePicks picks, Sight sight, ImmutableArray<SeenPart> parts, Func<Box, Box> put)
    {
        (this.picks, this.parts) = (picks, parts);
        bays =
            sight.Side == ViewFrom.Front
                ?
                [
                    .. sight
                        .Piece.Openings.Where(bay => picks.Bays.ContainsKey(bay.Path))
                        .Select(bay => (bay, put(sight.Of(bay.Box)))),
                ]
                : [];
        stops =
        [
            .. parts
                .Where(part => part.IsSeen)
                .GroupBy(part => part.Part.Part.Id)
                .Select(alike => alike.MaxBy(part => part.Free.Max(free => free.Width * free.Height))!.Mark),
        ];
    }

    /// <summary>What is pressed behind a part and before all that was drawn already.</summary>
    public IEnumerable<Shape> Before(SeenPart part)
    {
        if (isDone || bays.Any(one => part.Part.Box.Y >= one.Bay.Box.EndY))
            return [];
        return Rest();
    }

    /// <summary>The places, where they have not been drawn.</summary>
    public IEnumerable<Shape> Rest()
    {
        if (isDone)
            return [];
        isDone = true;
        return [.. bays.Select(one => Area(one.Bay, one.Place)), .. parts.Where(IsThin).Select(Beside)];
    }

    /// <summary>The part's wood; one copy of each kind can be reached by keyboard.</summary>
    public Marked Named(Marked wood, SeenPart part) => stops.Contains(part.Mark) ? picks.Stop(wood, part.Part.Part) : wood;

    private Marked Area(Opening bay, Box place) =>
        picks.Area(bay, new Patch(Fill.Clear, place), new Frame(Stroke.NextCut, place.Inset(Inset)));

    private static bool IsThin(SeenPart part) => part.IsSeen && Math.Min(part.Place.Width, part.Place.Height) < Target;

    private Marked Beside(SeenPart part)
    {
        double More(double size, double most) => Math.Clamp((Target - size) / 2, 0, Math.Min(MostBeside, most));
        var (place, (mostX, mostY)) = (part.Place, Left(part));
        var (x, y) = (More(place.Width, mostX), More(place.Height, mostY));
        Box around = new(place.X - x, place.Y - y, place.Width + (2 * x), place.Height + (2 * y));
        return new(part.Mark, [new Patch(Fill.Clear, around)]);
    }

    // Half of the room between the thin parts of a bay stays the bay's.
    private (double X, double Y) Left(SeenPart part)
    {
        var (x, y) = (MostBeside, MostBeside);
        foreach (var (_, place) in bays.Where(one => one.Place.Overlaps(part.Place)))
        {
            var shares = 4.0 * (1 + parts.Count(other => IsThin(other) && place.Holds(other.Place.Centre)));
            (x, y) = (Math.Min(x, place.Width / shares), Math.Min(y, place.Height / shares));
        }

        return (x, y);
    }
}
