using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Ranks what could leave next by the habits of the trade. Rules of order: Handwork in Wood (1910), pp. 130, 152,
/// 189–197; Mission Furniture 1–3 (1909–1912); Carpentry and Woodwork (1911), pp. 354–369.</summary>
internal sealed class Ranking(Solids solids, Contacts contacts, Access access)
{
    // A strip is no wider than so many times its thickness (our limit).
    private const int Narrow = 8;

    private readonly Dictionary<int, Unit> owner = [];
    private readonly Dictionary<Unit, HashSet<Unit>> joined = [];
    private readonly Dictionary<Unit, (Rank, List<(Link, int)>)> single = [];
    private readonly Dictionary<string, int> names = Names(solids);
    private Covers covers = Covers.None;
    private Hubs hubs = new([]);
    private bool isJoined;
    private bool isFramed;

    /// <summary>Takes in what stands.</summary>
    public void See(IReadOnlyList<Unit> standing)
    {
        owner.Clear();
        joined.Clear();
        foreach (var unit in standing)
        foreach (var copy in unit.Copies)
            owner[copy] = unit;
        foreach (var unit in standing)
            joined[unit] = [.. unit.Copies.SelectMany(Joined).Where(other => other != unit)];
        covers = new Covers(solids, contacts, owner, standing);
        hubs = new Hubs(joined);
        single.Clear();
        var joinery = solids.Links.Where(link => IsJoinery(link) && Joins(link)).ToList();
        (isJoined, isFramed) = (joinery.Count > 0, joinery.Exists(link => Cavity.IsPegged(link.Kind)));
    }

    /// <summary>Whether it lies on others and covers them.</summary>
    public bool IsCover(Unit unit) => covers.IsCover(unit);

    /// <summary>Ranks a removal.</summary>
    public Rank Of(IReadOnlyList<Unit> leaving, Way way)
    {
        var (rank, links) = leaving.Count == 1 ? Single(leaving[0]) : Whatever(leaving);
        return rank with
        {
            Lateral = links.Count(one => IsLateral(one.Link, one.Link.From == one.Copy ? way : way.Turned())),
            Order = rank.Order with { Way = Preference(way) },
        };
    }

    private (Rank, List<(Link Link, int Copy)>) Single(Unit unit)
    {
        if (!single.TryGetValue(unit, out var known))
            single[unit] = known = Whatever([unit]);
        return known;
    }

    // All but what the direction decides.
    private (Rank, List<(Link Link, int Copy)>) Whatever(IReadOnlyList<Unit> leaving)
    {
        var gone = leaving.ToHashSet();
        var links = leaving
            .SelectMany(unit => unit.Copies)
            .SelectMany(copy =>
                solids.Of(copy).Where(link => IsHeld(link.Other(copy), gone)).Select(link => (Link: link, Copy: copy))
            )
            .ToList();
        var rank = new Rank(
            leaving.Min(Tier),
            links.Count(one => !access.IsReachable(one.Link, IsFixed)),
            Split(leaving, gone) + Carried(gone),
            leaving.Sum(unit => Hangs(unit) ? 0 : covers.Over(unit, gone)),
            isJoined && !leaving.All(unit => IsAddOn(unit, links)) ? 1 : 0,
            0,
            Dangling(gone),
            (0, -First(leaving[0]), -Place(leaving), -leaving[0].Copies[0])
        );
        return (rank, links);
    }

    /// <summary>What stands before the screws that hold these units to the others.</summary>
    public HashSet<Unit> Before(IReadOnlyList<Unit> leaving)
    {
        var gone = leaving.ToHashSet();
        var links = gone.SelectMany(unit => unit.Copies)
            .SelectMany(copy => solids.Of(copy).Where(link => IsHeld(link.Other(copy), gone)))
            .Where(link => !access.IsReachable(link, IsFixed));
        return [.. links.SelectMany(link => access.Covering(link, IsFixed)).Select(copy => owner[copy])];
    }

    private static Dictionary<string, int> Names(Solids solids) =>
        solids.All.Select(one => one.Name).Distinct().Select((name, i) => (name, i)).ToDictionary();

    private bool Joins(Link link) =>
        owner.TryGetValue(link.From, out var from) && owner.TryGetValue(link.Into, out var into) && from != into;

    // Let in and glued, or doweled: the wood holds, not a screw.
    private bool IsJoinery(Link link) => (link.IsLet || link.Kind == JointKind.Dowel) && Gluing.IsGlued(solids, link);

    // What screws alone hold goes on a frame of tenons or dowels when that is dry; on a case only strips and covers do, since its
    // shelves go in before its last side.
    private bool IsAddOn(Unit unit, List<(Link Link, int Copy)> links) =>
        links.TrueForAll(one =>
            one.Link.Kind is JointKind.Screwed or JointKind.PocketScrew or JointKind.Slotted || !Bodies.IsFirm(one.Link.Kind)
        ) && (isFramed || covers.IsCover(unit) || unit.Copies.All(copy => IsStrip(solids.All[copy].Copy)));

    private static bool IsStrip(PartCopy copy) => copy.Box.Extent(copy.Across) <= copy.Box.Extent(copy.Flat) * Narrow;

    private IEnumerable<Unit> Joined(int copy) =>
        solids
            .Of(copy)
            .Where(link => Bodies.IsFirm(link.Kind))
            .Select(link => owner.GetValueOrDefault(link.Other(copy)))
            .OfType<Unit>();

    private bool IsHeld(int copy, HashSet<Unit> gone) => owner.TryGetValue(copy, out var unit) && !gone.Contains(unit);

    // What swings or can be taken out is no hindrance to a driver.
    private bool IsFixed(int copy) => owner.TryGetValue(copy, out var unit) && !unit.IsFitted;

    private static int Tier(Unit unit) =>
        unit.Kind switch
        {
            UnitKind.Wall => 0,
            UnitKind.Loose => 1,
            UnitKind.Stop or UnitKind.Front => 2,
            UnitKind.Drawer => 3,
            UnitKind.Door or UnitKind.Lid or UnitKind.Leaf => 4,
            _ => 5,
        };

    // Parts that what remains falls into, beyond those it is in already, and those that what leaves falls into.
    private int Split(IReadOnlyList<Unit> leaving, HashSet<Unit> gone)
    {
        if (leaving.Count == 1)
            return hubs.Cuts(leaving[0]);
        var attached = gone.Any(unit => joined[unit].Count > 0);
        return Hubs.Pieces(joined, gone)
            - hubs.Count
            + (attached ? 0 : 1)
            + Hubs.Pieces(joined, [.. joined.Keys.Except(leaving)])
            - 1;
    }

    // Parts that hang on covers alone, such as shelves screwed through a back: they go on after it (Mission Furniture 2, p. 50).
    private int Carried(HashSet<Unit> gone) =>
        gone.Where(covers.IsCover).SelectMany(unit => joined[unit]).Distinct().Count(unit => !gone.Contains(unit) && Hangs(unit));

    private bool Hangs(Unit unit) => !covers.IsCover(unit) && joined[unit].Count > 0 && joined[unit].All(covers.IsCover);

    private int Dangling(HashSet<Unit> gone) =>
        gone.SelectMany(unit => joined[unit])
            .Distinct()
            .Count(unit =>
                !gone.Contains(unit) && joined[unit].Count > 1 && joined[unit].Count(other => !gone.Contains(other)) <= 1
            );

    private bool IsLateral(Link link, Way way) =>
        link.Kind switch
        {
            JointKind.Hinged or JointKind.Sliding or JointKind.Resting or JointKind.Slotted or JointKind.Rabbet => false,
            _ => !Cavity.IsAway(solids, link, way),
        };

    // Last goes on what lies on top, then the face, then the back, then the right side.
    private static int Preference(Way way) =>
        (way.Axis, way.Forward) switch
        {
            (Axis.Z, true) => 0,
            (Axis.Y, false) => 1,
            (Axis.Y, true) => 2,
            (Axis.X, true) => 3,
            (Axis.X, false) => 4,
            _ => 5,
        };

    // Whatever the sizes, names stand in the same order.
    private int First(Unit unit) => names[solids.All[unit.Copies[0]].Name];

    private long Place(IReadOnlyList<Unit> leaving)
    {
        var box = solids.Around(leaving.SelectMany(unit => unit.Copies));
        return Way.Axes.Sum(axis => box.Start(axis).Ticks + box.End(axis).Ticks);
    }
}
