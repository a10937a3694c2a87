using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Finds frames: uprights and rails in one plane, such as the two ends of a table, a headboard, a face frame. Where
/// posts belong to frames of both directions, the shorter ones are made first, as all sources have it (Handwork in Wood, pp. 130,
/// 196; Carpentry and Woodwork, p. 367; Mission Furniture 1–3).</summary>
internal sealed class Frames(Solids solids, IReadOnlyList<Unit> atoms)
{
    // Our limits: how much wider than thick a part may be and still lie in a frame edgewise, how thick a frame is beside its
    // greatest extent, and how much shorter the shorter frames are.
    private const int Wide = 3;
    private const int Flatness = 3;
    private const double Shorter = 0.9;

    private readonly Dictionary<int, Unit> owner = Unit.Owners(atoms);

    /// <summary>Returns their copies.</summary>
    public List<int[]> Find()
    {
        var (ends, fronts) = (In(Axis.X), In(Axis.Y));
        var shared = ends.SelectMany(set => set).Intersect(fronts.SelectMany(set => set)).ToHashSet();
        if (shared.Count == 0)
            return [.. ends, .. fronts];
        var (first, second) = AreFirst(ends, fronts) ? (ends, fronts) : (fronts, ends);
        var taken = first.SelectMany(set => set).ToHashSet();
        return [.. first, .. second.Where(set => !set.Any(taken.Contains))];
    }

    // Rails that are only lapped on the posts' faces make a frame where no others do; on a glued frame they are runners.
    private List<int[]> In(Axis normal)
    {
        var glued = Sets(normal, false).Where(set => IsFrame(set, normal) && IsGlued(set)).ToList();
        var taken = glued.SelectMany(set => set).ToHashSet();
        return [.. glued, .. Sets(normal, true).Where(set => !set.Any(taken.Contains) && IsFrame(set, normal))];
    }

    private List<int[]> Sets(Axis normal, bool lapped)
    {
        var lying = atoms.Where(atom => Lies(atom, normal)).ToHashSet();
        var sets = new Clusters(lying.SelectMany(atom => atom.Copies));
        foreach (var atom in lying)
        foreach (var copy in atom.Copies)
            sets.Join(atom.Copies[0], copy);
        foreach (var link in solids.Links.Where(link => lapped || link.Along != normal))
            if (
                IsIn(link.From, lying)
                && IsIn(link.Into, lying)
                && owner[link.From] != owner[link.Into]
                && IsInPlane(link, normal)
            )
                sets.Join(link.From, link.Into);
        return sets.All();
    }

    private bool IsGlued(int[] set) =>
        solids.Links.Any(link => set.Contains(link.From) && set.Contains(link.Into) && Gluing.IsGlued(solids, link));

    private bool IsIn(int copy, HashSet<Unit> lying) => owner.TryGetValue(copy, out var atom) && lying.Contains(atom);

    private bool Lies(Unit atom, Axis normal)
    {
        var copy = atom.Copies.Select(one => solids.All[one]).MaxBy(one => one.Wood)!.Copy;
        return copy.Flat == normal
            || (copy.Along != normal && copy.Box.Extent(normal).Ticks <= Wide * copy.Box.Extent(copy.Flat).Ticks);
    }

    // Beside each other in the plane, or crossing and lapped on its face.
    private bool IsInPlane(Link link, Axis normal)
    {
        var (from, into) = (solids.All[link.From].Copy, solids.All[link.Into].Copy);
        if (link.Along == normal)
            return from.Along != into.Along;
        var least = Length.Min(from.Box.Extent(normal), into.Box.Extent(normal));
        return Way.Overlap(from.Box, into.Box, normal).Ticks * 2 >= least.Ticks;
    }

    private bool IsFrame(int[] set, Axis normal)
    {
        var units = set.Select(copy => owner[copy]).Distinct().ToList();
        var box = solids.Around(set);
        var across = normal == Axis.X ? Axis.Y : Axis.X;
        return units.Count >= 3
            && set.Select(copy => solids.All[copy].Copy.Along).Distinct().Count() > 1
            && box.Extent(normal).Ticks * Flatness <= Length.Max(box.Extent(across), box.Dz).Ticks;
    }

    private bool AreFirst(List<int[]> ends, List<int[]> fronts)
    {
        var (deep, wide) = (Longest(ends, Axis.Y), Longest(fronts, Axis.X));
        if (deep < wide * Shorter || wide < deep * Shorter)
            return deep < wide;
        var (paired, facing) = (AreAlike(ends), AreAlike(fronts));
        return paired != facing ? paired : ends.Sum(set => set.Length) >= fronts.Sum(set => set.Length);
    }

    private double Longest(List<int[]> frames, Axis axis) => frames.Max(set => solids.Around(set).Extent(axis).Ticks);

    private bool AreAlike(List<int[]> frames) =>
        frames.Count > 1
        && frames
            .Select(set => string.Join('|', set.Select(copy => solids.All[copy].Name).Order(StringComparer.Ordinal)))
            .Distinct()
            .Count() == 1;
}
