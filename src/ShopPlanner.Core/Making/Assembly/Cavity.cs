using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Which ways a joint lets its part leave what takes it.</summary>
internal static class Cavity
{
    // Tongues in one groove that stand nearer than this leave no wall between them (panels stand free by less).
    private static readonly Length Gap = Length.FromInches(0.125m);

    /// <summary>Whether a joint that only butts is held by pegs, so that its part leaves along them alone.</summary>
    public static bool IsPegged(JointKind kind) =>
        kind is JointKind.Dowel or JointKind.MortiseAndTenon or JointKind.Dovetail or JointKind.Beveled;

    /// <summary>Whether a move of the joint's part goes straight out of what takes it.</summary>
    public static bool IsAway(Solids solids, Link link, Way way)
    {
        if (way.Axis != link.Along)
            return false;
        // A key or a wedge is driven in from either side.
        if (link.Kind == JointKind.Resting)
            return true;
        var off = way.Middle(solids.Box(link.From)) - way.Middle(solids.Box(link.Into));
        return off >= Length.Zero;
    }

    /// <summary>Whether the joint's part can leave this way, though it reaches into what takes it.</summary>
    /// <param name="solids">The piece.</param>
    /// <param name="link">The joint.</param>
    /// <param name="way">Of its part.</param>
    /// <param name="wood">What both share.</param>
    public static bool Lets(Solids solids, Link link, Way way, Box wood)
    {
        var into = solids.Box(link.Into);
        if (way.Axis == link.Along)
            return IsAway(solids, link, way) && way.Ahead(wood) == way.Ahead(into);
        // A lap takes the whole of the other part: it holds on both its sides.
        if (IsPegged(link.Kind) || wood.Extent(link.Along) == into.Extent(link.Along))
            return false;
        return way.Ahead(wood) == way.Ahead(into) || (link.Kind == JointKind.Groove && RunsOut(solids, link, way, wood));
    }

    // A groove is cut along the whole of a part: its end is open where nothing but the part's own tongue or tenon, or
    // another tongue in the same groove, lies between. What else stands there is in the way by itself.
    private static bool RunsOut(Solids solids, Link link, Way way, Box wood)
    {
        var end = way.Ahead(solids.Box(link.Into)) - Hidden(solids, link.Into, way);
        var reached = way.Ahead(wood) + link.Fit.Joint.Clearance;
        var others = solids
            .Of(link.Into)
            .Where(one => one != link && one.Into == link.Into && one.Kind == JointKind.Groove && one.Along == link.Along)
            .Select(one => solids.Box(one.From).Shared(solids.Box(one.Into)))
            .OfType<Box>()
            .Where(one => way.Beside(one, wood))
            .OrderBy(one => way.Behind(one).Ticks);
        foreach (var other in others.Where(one => way.Ahead(one) > way.Ahead(wood)))
            if (way.Behind(other) <= reached + Gap)
                reached = Length.Max(reached, way.Ahead(other));
        return reached >= end;
    }

    // How far the part itself is let into another one at that end.
    private static Length Hidden(Solids solids, int copy, Way way) =>
        solids
            .Of(copy)
            .Where(one => one.From == copy && one.Along == way.Axis && one.IsLet)
            .Where(one => way.Middle(solids.Box(one.Into)) > way.Middle(solids.Box(copy)))
            .Select(one => one.Fit.Joint.Depth)
            .Aggregate(Length.Zero, Length.Max);
}
