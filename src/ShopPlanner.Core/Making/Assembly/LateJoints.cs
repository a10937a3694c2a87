using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Leaves a thin part loose at one end where its own screws would cover those of a joint that is made after it: slats
/// that run down over the screws of a shelf (Mission Furniture 1, p. 111).</summary>
internal static class LateJoints
{
    // What is thinner bends aside by hand (our limit).
    private static readonly Length Bends = Length.FromInches(0.5m);

    /// <summary>Returns the stages with those joints taken out and made right after what they would cover.</summary>
    public static List<Told> Of(Solids solids, Access access, IReadOnlyList<Told> told)
    {
        var at = told.SelectMany((one, i) => one.Links.Select(link => (link.Index, i)))
            .ToDictionary(one => one.Index, one => one.i);
        var late = new SortedDictionary<int, List<Link>>();
        foreach (var link in solids.Links.Where(link => link.Kind == JointKind.Screwed && at.ContainsKey(link.Index)))
        {
            var there = told.Take(at[link.Index] + 1).SelectMany(one => one.Handled).ToHashSet();
            foreach (var over in access.Over(link, there.Contains).Where(copy => IsThin(solids, copy, link)))
            foreach (
                var held in Loosened(solids, over, link)
                    .Where(held => at.GetValueOrDefault(held.Index, int.MaxValue) <= at[link.Index])
            )
                Add(late, at[link.Index], held);
        }

        return late.Count == 0 ? [.. told] : Moved(told, late);
    }

    private static bool IsThin(Solids solids, int copy, Link link) => solids.Box(copy).Extent(link.Along) <= Bends;

    // Its butt joints to what the screws go through, where it is held by another one beside them.
    private static List<Link> Loosened(Solids solids, int over, Link link)
    {
        var all = solids.Of(over);
        var loose = all.Where(one => !one.IsLet && one.Other(over) is var other && (other == link.From || other == link.Into))
            .ToList();
        return loose.Count < all.Count && loose.TrueForAll(one => !Gluing.IsGlued(solids, one)) ? loose : [];
    }

    private static void Add(SortedDictionary<int, List<Link>> late, int after, Link held)
    {
        foreach (var other in late.Values)
            other.RemoveAll(one => one == held);
        if (!late.TryGetValue(after, out var links))
            late[after] = links = [];
        links.Add(held);
    }

    private static List<Told> Moved(IReadOnlyList<Told> told, SortedDictionary<int, List<Link>> late)
    {
        var moved = late.Values.SelectMany(links => links).ToHashSet();
        var all = new List<Told>();
        for (var i = 0; i < told.Count; i++)
        {
            told[i].Links.RemoveAll(moved.Contains);
            all.Add(told[i]);
            if (!late.TryGetValue(i, out var links) || links.Count == 0)
                continue;
            var after = new Told(told[i].Of, StageKind.Screw, told[i].Number) { IsLate = true };
            after.Links.AddRange(links.OrderBy(link => link.Index));
            after.Present.AddRange(told[i].Present.Concat(told[i].Handled).Except(after.Handled));
            all.Add(after);
        }

        return all;
    }
}
