using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>What a design asks for that cannot be built, or that a person should know before the saw runs: warnings, since a
/// hand may have meant it so.</summary>
internal sealed class Findings(Builder builder, Box outside, LengthUnit unit)
{
    // Where everything lies in one place, the first few say it all.
    private const int MostClashes = 20;

    private readonly List<Draft> members = [.. builder.Drafts.Where(one => one.Purpose == PartPurpose.Member)];

    public void Note()
    {
        foreach (var (a, b) in Clashes().Take(MostClashes))
            builder.Warn(
                Severity.Fails,
                $"{a.Name} and {b.Name.ToLowerInvariant()} would be in the same place. Change one of their sizes.",
                a
            );
        foreach (var draft in Each(one => one.Material is { Form: MaterialForm.Board } board && Width(one) > board.Width))
            builder.Warn(
                Severity.Fails,
                $"{draft.Name} is {Text(Width(draft))} wide, but its board is {Text(draft.Material.Width!.Value)}. "
                    + "Use a wider board, or glue up strips.",
                draft
            );
        foreach (var draft in Each(one => one.Box.Around(outside) != outside))
            builder.Warn(Severity.Watch, $"{draft.Name} sticks out past the outside size.", draft);
    }

    // Two members in one place without a joint that lets one into the other: the design asks for what cannot be built.
    private IEnumerable<(Draft, Draft)> Clashes()
    {
        var let = builder.Joints.Where(one => one.Depth.IsPositive).Select(one => (one.From, one.Into)).ToHashSet();
        bool IsLetIn(Draft a, Draft b) => let.Contains((a, b)) || let.Contains((b, a));
        for (var i = 0; i < members.Count; i++)
        for (var k = i + 1; k < members.Count; k++)
            if (
                members[i].Box.Shared(members[k].Box) is { } shared
                && !IsLetIn(members[i], members[k])
                && !Cutouts.Clear(members[i], members[k], shared)
            )
                yield return (members[i], members[k]);
    }

    private IEnumerable<Draft> Each(Func<Draft, bool> which) => members.Where(which).DistinctBy(one => (one.Name, Width(one)));

    private static Length Width(Draft draft) => draft.Box.Extent(draft.Across);

    private string Text(Length length) => LengthFormat.WithUnit(length, unit);
}
