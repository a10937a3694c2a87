using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Whether the screws of a joint can be driven: what stands where the driver has to be. Worked out when it is
/// asked.</summary>
internal sealed class Access(Solids solids)
{
    // Common practice: a drill with a bit in it is about 8 in long, and a hand goes behind it.
    private static readonly Length Driver = Length.FromInches(10);

    // Half as wide as the bit holder, and how far a tilted driver stands off a pocket hole's face (common practice).
    private static readonly Length Half = Length.FromInches(0.5m);
    private static readonly Length Off = Length.FromInches(3);

    // For each joint the sides that it can be driven from; for each of those what stands before each screw.
    private readonly int[][][]?[] sides = new int[][][]?[solids.Links.Length];

    /// <summary>Whether at least one screw can be driven from one of its sides while these copies are there.</summary>
    public bool IsReachable(Link link, Func<int, bool> isThere) =>
        Sides(link) is var ways
        && (ways.Length == 0 || Array.Exists(ways, way => Array.Exists(way, screw => !Array.Exists(screw, one => isThere(one)))));

    /// <summary>What stands before one of its screws on its better side while these copies are there; empty where all can be
    /// driven.</summary>
    public IEnumerable<int> Covering(Link link, Func<int, bool> isThere) =>
        Sides(link).Select(way => way.SelectMany(screw => screw).Where(isThere).Distinct().ToList()).MinBy(way => way.Count)
        ?? [];

    /// <summary>What lies over the face through which its screws go while these copies are there, before a screw or beside
    /// one.</summary>
    public IEnumerable<int> Over(Link link, Func<int, bool> isThere)
    {
        if (link.Kind != JointKind.Screwed || link.Fit.Meeting is not { } meeting)
            return [];
        return Near(link)
            .Select(pair => Before(pair.Near, pair.Far, link.Along))
            .Select(room => Standing(link, meeting.With(room.Along, room.Start, room.End)).Where(isThere).ToList())
            .MinBy(over => over.Count)!;
    }

    private int[][][] Sides(Link link) => sides[link.Index] ??= Work(link);

    private int[][][] Work(Link link)
    {
        if (link.Fit.Meeting is not { } meeting)
            return [];
        if (link.Kind == JointKind.Slotted)
            return Below(link, meeting);
        if (solids.Item(link) is not { Places: { IsEmpty: false } places })
            return [];
        return link.Kind == JointKind.PocketScrew ? Pockets(link, meeting, places) : Faces(link, meeting, places);
    }

    private int[][][] Faces(Link link, Box meeting, ImmutableArray<Length> places) =>
        [
            .. Near(link)
                .Select(pair => Corridors(link, Before(pair.Near, pair.Far, link.Along), Row(link, meeting), meeting, places)),
        ];

    // Screws go through the thinner part from its far face; from either where both are as thick.
    private List<(Box Near, Box Far)> Near(Link link)
    {
        var (from, into) = (solids.Box(link.From), solids.Box(link.Into));
        var (one, other) = (from.Extent(link.Along), into.Extent(link.Along));
        var near = new List<(Box, Box)>();
        if (one <= other)
            near.Add((from, into));
        if (other <= one)
            near.Add((into, from));
        return near;
    }

    // A top that moves is screwed through what lies flat under it; beside a rail that stands on edge there is room.
    private int[][][] Below(Link link, Box meeting)
    {
        if (solids.All[link.Into].Copy.Flat != link.Along)
            return [];
        var under = solids.Box(link.Into);
        var row = Row(link, meeting);
        var wide = meeting.Extent(row).Ticks;
        ImmutableArray<Length> places = [Length.FromTicks(wide / 4), Length.FromTicks(wide / 2), Length.FromTicks(wide * 3 / 4)];
        return [Corridors(link, Before(under, solids.Box(link.From), link.Along), row, meeting, places)];
    }

    // The room that the driver takes outside the near part.
    private static (Axis Along, Length Start, Length End) Before(Box near, Box far, Axis along)
    {
        var isForward = near.Start(along) + near.End(along) >= far.Start(along) + far.End(along);
        return isForward
            ? (along, near.End(along), near.End(along) + Driver)
            : (along, near.Start(along) - Driver, near.Start(along));
    }

    private static Axis Row(Link link, Box meeting) =>
        Way.Axes.Where(axis => axis != link.Along).MaxBy(axis => meeting.Extent(axis).Ticks);

    private int[][] Corridors(
        Link link,
        (Axis Axis, Length Start, Length End) room,
        Axis row,
        Box meeting,
        ImmutableArray<Length> places
    ) =>
        [
            .. places.Select(place =>
            {
                var at = meeting.Start(row) + place;
                var box = Middle(meeting, link.Along, row).With(row, at - Half, at + Half);
                return Standing(link, box.With(room.Axis, room.Start, room.End));
            }),
        ];

    // Screws stand in the middle of the narrow side.
    private static Box Middle(Box meeting, Axis along, Axis row)
    {
        var narrow = BoxSides.Third(along, row);
        var middle = Length.FromTicks((meeting.Start(narrow) + meeting.End(narrow)).Ticks / 2);
        var half = Length.Min(Half, Length.FromTicks(Math.Max(1, meeting.Extent(narrow).Ticks / 2)));
        return meeting.With(narrow, middle - half, middle + half);
    }

    // The holes are in one of the faces of the part that is let in; the driver lies along it, off its face.
    private int[][][] Pockets(Link link, Box meeting, ImmutableArray<Length> places)
    {
        var (copy, from) = (solids.All[link.From].Copy, solids.Box(link.From));
        if (copy.Flat == link.Along)
            return [];
        var row = BoxSides.Third(link.Along, copy.Flat);
        var isForward = Cavity.IsAway(solids, link, new Way(link.Along, true));
        var reach = Length.Min(Driver, from.Extent(link.Along));
        var joint = isForward ? from.Start(link.Along) : from.End(link.Along) - reach;
        var body = meeting.With(link.Along, joint, joint + reach);
        return
        [
            Holes(link, body.With(copy.Flat, from.End(copy.Flat), from.End(copy.Flat) + Off), row, places),
            Holes(link, body.With(copy.Flat, from.Start(copy.Flat) - Off, from.Start(copy.Flat)), row, places),
        ];
    }

    private int[][] Holes(Link link, Box room, Axis row, ImmutableArray<Length> places)
    {
        var start = room.Start(row);
        var end = room.End(row);
        return
        [
            .. places
                .Select(place => Length.Min(start + place, end))
                .Select(at => Standing(link, room.With(row, at - Half, at + Half))),
        ];
    }

    private int[] Standing(Link link, Box room) =>
        [
            .. Enumerable
                .Range(0, solids.All.Length)
                .Where(one => one != link.From && one != link.Into && solids.Box(one).Shared(room) is not null),
        ];
}
