using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>What cannot be put together in any order, or only by a tool that reaches into little room.</summary>
internal sealed class Findings(Solids solids, Blocking blocking, Access access, Unit whole, IReadOnlyList<Told> told)
{
    private readonly Tell tell = new(solids);

    /// <summary>The most severe first.</summary>
    public IEnumerable<WorkFinding> All() => [.. ShutIn(whole), .. Tight()];

    private IEnumerable<WorkFinding> ShutIn(Unit unit)
    {
        foreach (var inner in unit.Insertions.Where(one => one.What.IsComposite).SelectMany(one => ShutIn(one.What)))
            yield return inner;
        var stuck = unit.Insertions.Where(one => one.IsShutIn).SelectMany(one => one.What.Copies).Order().ToList();
        if (stuck.Count == 0)
            yield break;
        var inside = stuck.MinBy(copy => Stopping(copy, stuck).Count);
        var around = Stopping(inside, stuck);
        yield return new(
            Severity.Fails,
            $"{Upper(tell.Marked([inside]))} can't be put in in any order: {tell.Marked(around)} shut it in on all sides. "
                + "Leave a side open, or join one of them so that it can go on last.",
            [.. tell.Marks(around.Prepend(inside))]
        );
    }

    private List<int> Stopping(int copy, List<int> stuck) =>
        [.. stuck.Where(other => other != copy && blocking.Ways(copy, other) != 0)];

    // Those that are there when a joint is made, and stand before all of its screws.
    private IEnumerable<WorkFinding> Tight()
    {
        var there = new HashSet<int>();
        foreach (var one in told)
        {
            if (one.Kind is not (StageKind.Hang or StageKind.Drawer or StageKind.Loose))
                there.UnionWith(one.Handled);
            var near = one.Of.Units.Count == 1 && one.Of.IsPiece ? there : [.. one.Present, .. one.Handled];
            foreach (var link in one.Links.Where(link => !access.IsReachable(link, near.Contains)).DistinctBy(Names))
            {
                int[] pair = [link.From, link.Into];
                yield return new(
                    Severity.Watch,
                    $"There is little room to drive the screws that join {tell.Marked([link.From])} to "
                        + $"{tell.Marked([link.Into])}. In the way: {tell.Marked(access.Covering(link, near.Contains))}. "
                        + "Use a right-angle driver or a stubby screwdriver.",
                    [.. pair.Select(copy => solids.All[copy].Mark)]
                );
            }
        }
    }

    private (string, string, JointKind) Names(Link link) => (solids.All[link.From].Name, solids.All[link.Into].Name, link.Kind);

    private static string Upper(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
