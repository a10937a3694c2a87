using System.Collections.Immutable;
using System.Diagnostics;
using ShopPlanner.Scheduling.Checks;
using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Planning;

/// <summary>A request → the schedule that finishes earliest, priority by priority; proven, or with the bound that is
/// known.</summary>
public static class SchedulePlanner
{
    /// <summary>Returns the schedule.</summary>
    /// <param name="request">Without faults: ids once, precedences of tasks that are there, uses of resources that are.</param>
    /// <param name="control">How to search.</param>
    public static Schedule Plan(ScheduleRequest request, ScheduleControl control)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(control);
        var clock = Stopwatch.StartNew();
        if (request.Tasks.IsEmpty)
            return new Schedule(ScheduleStatus.Proven, 0, 0, clock.Elapsed.TotalSeconds, Schedule.NoStarts, []);
        var network = Network.Of(request);
        var reasons = ImpossibleTasks.Of(request, network);
        if (!reasons.IsEmpty)
            return Schedule.Impossible(reasons, clock.Elapsed.TotalSeconds);
        var stages = new Stages(network, control, TimeSpan.FromSeconds(request.Seconds), clock);
        if (!stages.Run())
            return Schedule.Impossible([stages.WhyNot(request)], clock.Elapsed.TotalSeconds);
        return new Schedule(
            stages.IsProven ? ScheduleStatus.Proven : ScheduleStatus.BestFound,
            stages.Finish,
            stages.Bound,
            clock.Elapsed.TotalSeconds,
            Starts(network, stages.Starts),
            []
        );
    }

    private static ImmutableSortedDictionary<string, int> Starts(Network network, int[] starts) =>
        Schedule.NoStarts.AddRange(network.Nodes.Select((node, i) => KeyValuePair.Create(node.Task.Id, starts[i])));
}
