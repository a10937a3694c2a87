using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Tells what hangs, slides or rests on a piece from the piece itself.</summary>
internal static class Bodies
{
    // A strip stands no farther from the door that it stops.
    private static readonly Length Near = Length.FromInches(0.25m);

    /// <summary>Returns the piece first, then what is fitted to it.</summary>
    public static List<Unit> Of(Solids solids)
    {
        var stops = Enumerable.Range(0, solids.All.Length).Where(copy => IsStop(solids, copy)).ToList();
        var sets = new Clusters(Enumerable.Range(0, solids.All.Length).Except(stops));
        foreach (var link in solids.Links.Where(link => IsFirm(link.Kind)))
            sets.Join(link.From, link.Into);
        var bodies = sets.All();
        var main = Main(solids, bodies);
        var held = bodies.Where(body => body != main).Select(body => (Body: body, Kind: Kind(solids, body))).ToList();
        // What nothing loose holds either belongs to the piece: it is set down with it.
        int[] piece = [.. main.Concat(held.Where(one => one.Kind is null).SelectMany(one => one.Body)).Order()];
        return
        [
            new(UnitKind.Piece, piece),
            .. held.Where(one => one.Kind is not null).SelectMany(one => Units(solids, one.Kind!.Value, one.Body)),
            .. stops.Select(stop => new Unit(UnitKind.Stop, [stop])),
        ];
    }

    // A front that is screwed to the face of a drawer's box is set when the box runs.
    private static IEnumerable<Unit> Units(Solids solids, UnitKind kind, int[] body)
    {
        var fronts = kind == UnitKind.Drawer ? body.Where(copy => IsFront(solids, copy)).ToList() : [];
        yield return new(kind, [.. body.Except(fronts)]);
        foreach (var front in fronts)
            yield return new(UnitKind.Front, [front]);
    }

    private static bool IsFront(Solids solids, int copy)
    {
        var (links, part) = (solids.Of(copy), solids.All[copy].Copy);
        return links.Count == 1
            && links[0].Kind == JointKind.Screwed
            && links[0].Along == part.Flat
            && Way.Axes.All(axis => axis == part.Flat || part.Box.Extent(axis) >= solids.Box(links[0].Other(copy)).Extent(axis));
    }

    // A strip glued on behind a door that hangs on something else.
    private static bool IsStop(Solids solids, int copy)
    {
        var links = solids.Of(copy);
        return links.Count > 0
            && links.All(link => link.Kind == JointKind.Glued && link.From == copy)
            && solids.Links.Any(hinge =>
                hinge.Kind == JointKind.Hinged
                && links.All(link => link.Into != hinge.From)
                && IsBehind(solids.Box(copy), solids.Box(hinge.From))
            );
    }

    // Its face touches the door's back, below or above the height where the two overlap only in part.
    private static bool IsBehind(Box strip, Box door) =>
        strip.Y == door.EndY
        && Way.Overlap(strip, door, Axis.X).IsPositive
        && strip.Dz < door.Dz
        && Way.Overlap(strip.Grown(Axis.Z, Near, Near), door, Axis.Z).IsPositive;

    /// <summary>Whether it holds parts together; else one hangs, slides or rests on the other.</summary>
    public static bool IsFirm(JointKind kind) =>
        kind is not (JointKind.Hinged or JointKind.Sliding or JointKind.SlidingGroove or JointKind.Resting or JointKind.Beveled);

    // The most wood among what is hung or slid on nothing.
    private static int[] Main(Solids solids, List<int[]> bodies)
    {
        var carrying = bodies.Where(body => !body.Any(copy => solids.Of(copy).Any(link => IsCarried(link, copy)))).ToList();
        return (carrying.Count > 0 ? carrying : bodies).MaxBy(body => body.Sum(copy => solids.All[copy].Wood))!;
    }

    private static bool IsCarried(Link link, int copy) =>
        link.From == copy && link.Kind is JointKind.Hinged or JointKind.Sliding or JointKind.SlidingGroove or JointKind.Resting;

    private static UnitKind? Kind(Solids solids, int[] body)
    {
        var links = body.SelectMany(copy => solids.Of(copy).Where(link => !IsFirm(link.Kind)).Select(link => (link, copy)))
            .ToList();
        if (links.Exists(one => one.link.Kind == JointKind.Beveled))
            return UnitKind.Wall;
        if (links.Exists(one => one.link.Kind == JointKind.Sliding))
            return UnitKind.Drawer;
        if (links.FirstOrDefault(one => one.link.Kind == JointKind.Hinged).link is { } hinge)
            return Hung(solids, body, hinge);
        return body.Length == 1 || links.Count > 0 ? UnitKind.Loose : null;
    }

    private static UnitKind Hung(Solids solids, int[] body, Link hinge)
    {
        var box = solids.Around(body);
        if (box.Dz > Length.Min(box.Dx, box.Dy))
            return UnitKind.Door;
        return hinge.Along != Axis.Z && Way.Overlap(solids.Box(hinge.From), solids.Box(hinge.Into), Axis.Z).IsPositive
            ? UnitKind.Leaf
            : UnitKind.Lid;
    }
}
