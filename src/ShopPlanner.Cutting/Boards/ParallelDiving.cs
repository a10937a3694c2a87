namespace ShopPlanner.Cutting.Boards;

/// <summary>
/// Dives on all cores, in rounds: within a round each keeps to itself, and between rounds the finds are taken in the order of
/// the divers, so that the random choice depends on the seed alone and not on which core is faster.
/// </summary>
internal static class ParallelDiving
{
    /// <summary>Dives until the search is done or the rounds are over.</summary>
    public static void Run(Search search, Relaxation relaxation, long rounds, double randomization)
    {
        var others = Enumerable.Range(1, search.Workers - 1).Select(_ => Copy(search, relaxation)).ToArray();
        try
        {
            var divers = others
                .Prepend(relaxation)
                .Select((own, at) => new DivingHeuristic(search, own, new Random(search.Seed + 1 + at)))
                .ToArray();
            for (var round = 0L; round < rounds && !search.Done; round++)
                Round(search, divers, randomization);
        }
        finally
        {
            foreach (var other in others)
                other.Dispose();
        }
    }

    private static void Round(Search search, DivingHeuristic[] divers, double randomization)
    {
        var finds = new Plan?[divers.Length];
        Parallel.For(0, divers.Length, at => divers[at].Run(randomization, plan => finds[at] = plan));
        foreach (var plan in finds)
            if (plan is not null)
                search.Offer(plan);
        search.Report();
    }

    private static Relaxation Copy(Search search, Relaxation relaxation)
    {
        var copy = new Relaxation(search);
        copy.Add(relaxation.Columns);
        return copy;
    }
}
