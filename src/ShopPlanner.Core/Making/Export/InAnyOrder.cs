using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Export;

/// <summary>Which subassemblies can be built in any order: those that become part of the same thing, where no step of one waits
/// for a step of another.</summary>
public static class InAnyOrder
{
    /// <summary>Returns the groups, each of two or more.</summary>
    /// <param name="units">The subassemblies.</param>
    /// <param name="steps">The steps.</param>
    public static ImmutableArray<ImmutableArray<Subassembly>> Of(
        ImmutableArray<Subassembly> units,
        ImmutableArray<WorkStep> steps
    )
    {
        var earlier = Earlier(steps);
        return
        [
            .. units
                .GroupBy(unit => unit.Within)
                .SelectMany(same => Groups([.. same], steps, earlier))
                .Where(group => group.Length > 1),
        ];
    }

    /// <summary>Returns a group as a sentence: <c>Left side, Right side and Door can be built in any order.</c></summary>
    /// <param name="group">Two or more.</param>
    public static string Sentence(ImmutableArray<Subassembly> group) =>
        $"{WordList.AsGiven(group.Select(Name))} can be built in any order.";

    private static string Name(Subassembly unit) =>
        unit.Units.Length > 1 ? FormattableString.Invariant($"{unit.Name} ({unit.Units.Length} alike)") : unit.Name;

    // Each unit joins the first group of which no member has to be built before or after it.
    private static IEnumerable<ImmutableArray<Subassembly>> Groups(
        ImmutableArray<Subassembly> units,
        ImmutableArray<WorkStep> steps,
        Dictionary<string, HashSet<string>> earlier
    )
    {
        var own = units.ToDictionary(
            unit => unit.Id,
            unit => steps.Where(step => step.Subassembly == unit.Id).Select(step => step.Id).ToHashSet(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        bool Waits(Subassembly one, Subassembly other) => own[one.Id].Any(id => earlier[id].Overlaps(own[other.Id]));
        var groups = new List<List<Subassembly>>();
        foreach (var unit in units.Where(unit => own[unit.Id].Count > 0))
        {
            var group = groups.Find(all => all.TrueForAll(one => !Waits(one, unit) && !Waits(unit, one)));
            if (group is null)
                groups.Add(group = []);
            group.Add(unit);
        }

        return groups.Select(group => group.ToImmutableArray());
    }

    // All that has to be done before each step; the steps stand in an order that can be followed.
    private static Dictionary<string, HashSet<string>> Earlier(ImmutableArray<WorkStep> steps)
    {
        var earlier = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var step in steps)
        {
            var before = new HashSet<string>(step.After, StringComparer.Ordinal);
            foreach (var id in step.After)
                before.UnionWith(earlier.GetValueOrDefault(id) ?? []);
            earlier[step.Id] = before;
        }

        return earlier;
    }
}
