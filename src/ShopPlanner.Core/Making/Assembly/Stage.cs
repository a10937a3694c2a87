using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>How something is put on, which decides what the step looks like.</summary>
internal enum StageKind
{
    /// <summary>Glued, in clamps.</summary>
    Glue,

    /// <summary>Slid in without glue.</summary>
    Slip,

    /// <summary>Screwed.</summary>
    Screw,

    /// <summary>Bolted, so that it comes apart.</summary>
    Bolt,

    /// <summary>A top that can move.</summary>
    Top,

    /// <summary>Set down: nothing holds it.</summary>
    Set,

    /// <summary>A door, lid or leaf is hung.</summary>
    Hang,

    /// <summary>A strip behind a hung door.</summary>
    Stop,

    /// <summary>A drawer is fitted.</summary>
    Drawer,

    /// <summary>A front is set on a drawer's box.</summary>
    Front,

    /// <summary>A loose part is put in.</summary>
    Loose,

    /// <summary>A cleat for the wall.</summary>
    Wall,
}

/// <summary>What is put together in one go.</summary>
/// <param name="Kind">How.</param>
internal sealed record Stage(StageKind Kind)
{
    /// <summary>What goes in, in order.</summary>
    public List<Insertion> Insertions { get; } = [];

    /// <summary>The same for stages of like units.</summary>
    public string Signature(Solids solids) =>
        Kind + " " + string.Join('|', Insertions.Select(one => Named(solids, one.What)).Order(StringComparer.Ordinal));

    /// <summary>What a unit is called when units are compared.</summary>
    public static string Named(Solids solids, Unit unit) =>
        unit.Kind + " " + string.Join(',', unit.Copies.Select(copy => solids.All[copy].Name).Order(StringComparer.Ordinal));
}

/// <summary>Parts the insertions of a unit into stages.</summary>
internal static class Stages
{
    public static List<Stage> Of(Solids solids, Unit unit)
    {
        var stages = new List<Stage>();
        var waiting = new List<Insertion>();
        foreach (var insertion in unit.Insertions)
        {
            // What the others are put onto, and what no straight move brings in, goes with the first of them.
            if (insertion.Out is null)
            {
                waiting.Add(insertion);
                continue;
            }

            Add(solids, unit, stages, insertion, waiting);
            waiting = [];
        }

        if (waiting.Count > 0)
            Add(solids, unit, stages, waiting[^1], waiting[..^1]);
        return stages;
    }

    private static void Add(Solids solids, Unit unit, List<Stage> stages, Insertion insertion, List<Insertion> before)
    {
        var kind = KindOf(solids, insertion, before);
        if (stages.Count == 0 || !Goes(solids, unit, stages[^1], insertion, kind))
            stages.Add(new Stage(kind));
        else if (kind == StageKind.Glue && stages[^1].Kind is StageKind.Slip or StageKind.Set)
        {
            var glued = new Stage(StageKind.Glue);
            glued.Insertions.AddRange(stages[^1].Insertions);
            stages[^1] = glued;
        }

        stages[^1].Insertions.AddRange(before);
        stages[^1].Insertions.Add(insertion);
    }

    private static StageKind KindOf(Solids solids, Insertion insertion, List<Insertion> before)
    {
        var links = insertion.Links.Concat(before.SelectMany(one => one.Links)).ToList();
        return Fitted(insertion.What.Kind) ?? ByJoints(solids, links, insertion.What);
    }

    private static StageKind ByJoints(Solids solids, List<Link> links, Unit what)
    {
        var kinds = links.ConvertAll(link => link.Kind);
        if (kinds.Contains(JointKind.Bolted))
            return StageKind.Bolt;
        if (links.Exists(link => link.Kind == JointKind.Slotted && what.Copies.Contains(link.From)))
            return StageKind.Top;
        if (links.Exists(link => Gluing.IsGlued(solids, link)))
            return StageKind.Glue;
        if (kinds.Exists(kind => kind is JointKind.Screwed or JointKind.PocketScrew))
            return StageKind.Screw;
        return kinds.Contains(JointKind.Slotted) ? StageKind.Screw
            : kinds.Count > 0 ? StageKind.Slip
            : StageKind.Set;
    }

    private static StageKind? Fitted(UnitKind kind) =>
        kind switch
        {
            UnitKind.Door or UnitKind.Lid or UnitKind.Leaf => StageKind.Hang,
            UnitKind.Drawer => StageKind.Drawer,
            UnitKind.Stop => StageKind.Stop,
            UnitKind.Front => StageKind.Front,
            UnitKind.Loose => StageKind.Loose,
            UnitKind.Wall => StageKind.Wall,
            _ => null,
        };

    // Glue-ups of one plane or one direction of clamps are one; what is put on one by one is one where it is alike.
    private static bool Goes(Solids solids, Unit unit, Stage last, Insertion next, StageKind kind)
    {
        if (IsOneGlueUp(unit) && IsInGlueUp(last.Kind) && IsInGlueUp(kind))
            return true;
        if (IsGlueUp(last.Kind) && IsGlueUp(kind))
            return !next.IsCover && (last.Kind == StageKind.Slip || kind == StageKind.Slip || SameWay(solids, last, next));
        return last.Kind == kind && last.Insertions.TrueForAll(one => one.Out is null || IsLike(solids, one.What, next.What));
    }

    private static bool IsGlueUp(StageKind kind) => kind is StageKind.Glue or StageKind.Slip;

    // In a frame a part may be set in before the one that holds it.
    private static bool IsInGlueUp(StageKind kind) => IsGlueUp(kind) || kind == StageKind.Set;

    private static bool IsOneGlueUp(Unit unit) => unit.Kind is not (UnitKind.Piece or UnitKind.Group);

    private static bool SameWay(Solids solids, Stage last, Insertion next)
    {
        var before = Clamped(solids, last.Insertions.SelectMany(one => one.Links));
        var after = Clamped(solids, next.Links);
        return before.Count == 0 || after.Count == 0 || before.Overlaps(after);
    }

    private static HashSet<Axis> Clamped(Solids solids, IEnumerable<Link> links) =>
        [.. links.Where(link => Gluing.IsGlued(solids, link)).Select(link => link.Along)];

    private static bool IsLike(Solids solids, Unit one, Unit other) => Stage.Named(solids, one) == Stage.Named(solids, other);
}
