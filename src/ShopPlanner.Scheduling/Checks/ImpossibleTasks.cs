using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Checks;

/// <summary>What can be seen to be impossible before any search, with the task that is to blame.</summary>
internal static class ImpossibleTasks
{
    private const int MostReasons = 50;

    /// <summary>Returns a sentence for each reason; none where a schedule may exist.</summary>
    public static ImmutableArray<string> Of(ScheduleRequest request, Network network)
    {
        if (Circle.Of(network) is { } circle)
            return
            [
                $"These tasks wait for each other in a circle: {string.Join(" → ", circle)}. Remove one of these precedences.",
            ];
        var reasons = network.Nodes.SelectMany(node => TooMuch(network, node)).Concat(Times(network)).ToList();
        if (reasons.Count == 0)
            reasons.AddRange(FixedClashes.Of(network));
        if (reasons.Count == 0)
            reasons.AddRange(OpenTime.Of(request, network));
        return reasons.Count <= MostReasons
            ? [.. reasons]
            : [.. reasons.Take(MostReasons), $"And {reasons.Count - MostReasons} more."];
    }

    private static IEnumerable<string> TooMuch(Network network, Node node)
    {
        foreach (var (uses, part) in new[] { (node.LaborUses, "labor"), (node.HoldUses, "hold") })
        foreach (var use in uses.Where(use => use.Amount > network.Capacity[use.Resource]))
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"'{node.Task.Id}' takes {use.Amount} of '{network.Names[use.Resource]}' for its {part}, and there "
                    + $"{(network.Capacity[use.Resource] == 1 ? "is" : "are")} {network.Capacity[use.Resource]}. "
                    + $"Get more, or do it in steps that take fewer."
            );
    }

    private static IEnumerable<string> Times(Network network)
    {
        var free = network.Nodes.Where(node => node.Task.Fixed is null).ToList();
        if (free.Count == 0)
            yield break;
        if (network.Axis.Windows.IsEmpty)
        {
            yield return "There are no windows: say when there is time to work.";
            yield break;
        }

        var longest = network.Axis.Windows.Max(window => window.Minutes);
        foreach (var node in free.Where(node => !node.IsSplit && node.Labor > longest))
            yield return $"'{node.Task.Id}' takes {Minutes.Say(node.Labor)} without a break, and the longest window is "
                + $"{Minutes.Say(longest)}: too short by {Minutes.Say(node.Labor - longest)}. Split the task, let it go "
                + "on in the next window, or open a longer window.";
        foreach (var node in free.Where(node => node.IsSplit && node.Labor > network.Axis.Total))
            yield return $"'{node.Task.Id}' takes {Minutes.Say(node.Labor)}, and all windows together are "
                + $"{Minutes.Say(network.Axis.Total)}: there is not enough open time.";
    }
}
