using ShopPlanner.Scheduling.Networks;

namespace ShopPlanner.Scheduling.Lists;

/// <summary>Builds many list schedules by the literature's ranks (latest start, longest way to the end, most followers, most
/// work to
/// follow), and by those ranks shaken at random, and keeps the best.</summary>
internal sealed class ListSearch
{
    // Enough for the usual ranks to be shaken often in a month's work, and for a thousand tasks to be placed in a moment.
    private const int Placements = 12_000;
    private const int LeastLists = 12;
    private const int MostLists = 240;

    // Who follows whom is told for each pair.
    private const int MostToFollow = 1000;

    private readonly Network network;
    private readonly int level;
    private readonly ListScheduler scheduler;
    private readonly Random random;
    private readonly List<double[]> ranks;

    private ListSearch(Network network, int level, int seed)
    {
        (this.network, this.level, scheduler) = (network, level, new ListScheduler(network));
        random = new Random(seed);
        ranks = [ByWayToEnd(), ByLatestStart()];
        if (network.Nodes.Length <= MostToFollow)
            ranks.AddRange([ByFollowers(), ByWorkToFollow()]);
    }

    /// <summary>The best starts found; null where none fits into the windows.</summary>
    /// <param name="network">Without a circle.</param>
    /// <param name="level">The last priority whose tasks are placed.</param>
    /// <param name="kept">Starts that are taken as they are.</param>
    /// <param name="bound">No schedule of the priority finishes before it: the search ends there.</param>
    /// <param name="seed">Where the random numbers start.</param>
    /// <param name="isOver">Whether no more lists are to be tried than are needed.</param>
    public static int[]? Best(Network network, int level, IReadOnlyList<int?> kept, int bound, int seed, Func<bool> isOver) =>
        new ListSearch(network, level, seed).Search(kept, bound, isOver);

    /// <summary>The tasks placed once more in the order of some starts: nothing in it could begin earlier by itself.</summary>
    public static int[]? Again(Network network, int level, int[] starts) =>
        new ListScheduler(network).Build([.. starts.Select(start => (double)start)], level, new int?[starts.Length]);

    /// <summary>The tasks placed no earlier than an earlier schedule had them, in its order: what nothing has changed for stays
    /// where it was.</summary>
    public static int[]? Near(Network network, int level)
    {
        var earlier = network.Nodes.Select(node => node.Task.Earlier).ToList();
        return new ListScheduler(network).Build(
            [.. earlier.Select(start => start ?? double.MaxValue)],
            level,
            new int?[earlier.Count],
            [.. earlier.Select(start => start ?? 0)]
        );
    }

    private int[]? Search(IReadOnlyList<int?> kept, int bound, Func<bool> isOver)
    {
        int[]? best = null;
        var lists = Math.Clamp(Placements / Math.Max(1, network.Nodes.Length), LeastLists, MostLists);
        for (var n = 0; n < lists; n++)
        {
            var list = n < ranks.Count ? ranks[n] : Shaken(ranks[n % ranks.Count]);
            if (scheduler.Build(list, level, kept) is not { } starts)
                continue;
            if (best is null || network.Finish(starts, level) < network.Finish(best, level))
                best = starts;
            if (network.Finish(best, level) <= bound || isOver())
                break;
        }

        return best;
    }

    private double[] Shaken(double[] list)
    {
        var reach = Math.Max(1, list.Max() - list.Min()) * (0.05 + (0.4 * random.NextDouble()));
        return [.. list.Select(rank => rank + (reach * random.NextDouble()))];
    }

    // Minutes that must still pass after a task has begun, whatever the windows.
    private double[] ByWayToEnd()
    {
        var way = new double[network.Nodes.Length];
        foreach (var i in network.Order.Reverse())
            way[i] =
                network.Nodes[i].Labor
                + network.Nodes[i].Hold
                + network.Nodes[i].After.Select(link => way[link.Task] + link.Wait).DefaultIfEmpty(0).Max();
        return [.. way.Select(minutes => -minutes)];
    }

    private double[] ByFollowers() => [.. Followers().Select(followers => -(double)followers.Count)];

    private double[] ByWorkToFollow() =>
        [
            .. Followers()
                .Select((followers, i) => -(double)(network.Nodes[i].Labor + followers.Sum(one => network.Nodes[one].Labor))),
        ];

    // The latest start that would still let all end when the way to the end alone would.
    private double[] ByLatestStart()
    {
        var horizon = network.Axis.Closes;
        var spans = Spans.Of(network, [.. Enumerable.Repeat(horizon + network.Nodes.Max(node => node.Hold), network.Levels)]);
        return [.. spans.Latest.Select(start => (double)start)];
    }

    private HashSet<int>[] Followers()
    {
        var followers = new HashSet<int>[network.Nodes.Length];
        foreach (var i in network.Order.Reverse())
        {
            followers[i] = [];
            foreach (var link in network.Nodes[i].After)
            {
                followers[i].Add(link.Task);
                followers[i].UnionWith(followers[link.Task]);
            }
        }

        return followers;
    }
}
