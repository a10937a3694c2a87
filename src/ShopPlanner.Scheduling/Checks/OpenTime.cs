using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Checks;

/// <summary>Whether the windows are enough.</summary>
internal static class OpenTime
{
    /// <summary>Returns a sentence for each thing that the windows are too few for.</summary>
    public static IEnumerable<string> Of(ScheduleRequest request, Network network)
    {
        for (var resource = 0; resource < network.Capacity.Length; resource++)
            if (Work(network, resource) is var work && work > (long)network.Capacity[resource] * network.Axis.Total)
                yield return $"There is not enough open time: '{network.Names[resource]}' has {Minutes.Say(work)} of work"
                    + $"{(network.Capacity[resource] == 1 ? "" : " in all")}, and the windows have "
                    + $"{Minutes.Say((long)network.Capacity[resource] * network.Axis.Total)}. Open more windows.";
        var none = Enumerable.Repeat(int.MaxValue / 2, network.Levels).ToList();
        if (Spans.Of(network, none).Without is not { } late)
            yield break;
        if (network.Nodes[late].Task.Begins is not null)
            yield return $"'{network.Nodes[late].Task.Id}' cannot begin when it is set to: what comes before it is not done "
                + "by then, or the window is too short. Set it to a later time, or let it go.";
        else
            yield return $"There is not enough open time: '{network.Nodes[late].Task.Id}' cannot begin before the last window "
                + $"closes{On(request)}, because of what comes before it. Open more windows.";
    }

    /// <summary>Says that no schedule fits, or that none was found.</summary>
    /// <param name="request">The request.</param>
    /// <param name="isCertain">Whether it is proven.</param>
    public static string WhyNot(ScheduleRequest request, bool isCertain) =>
        isCertain
            ? $"There is not enough open time: the tasks do not fit before the last window closes{On(request)}. Open "
                + "more windows."
            : $"No schedule was found in the time given that ends before the last window closes{On(request)}. Open more "
                + "windows, or search longer.";

    private static string On(ScheduleRequest request) =>
        request.Start is { } start && request.Windows.Length > 0
            ? $" ({ClockTime.Say(request, start, request.Windows[^1].Closes)})"
            : "";

    private static long Work(Network network, int resource) =>
        network
            .Nodes.Where(node => node.Task.Fixed is null)
            .Sum(node => (long)node.Labor * node.LaborUses.Where(use => use.Resource == resource).Sum(use => use.Amount));
}
