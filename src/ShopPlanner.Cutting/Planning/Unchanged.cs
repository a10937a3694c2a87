using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Planning;

/// <summary>Finds materials of an earlier plan that an edit left as they were.</summary>
internal static class Unchanged
{
    /// <summary>The earlier answer to each job; null where the job is new or changed, or was not answered wholly.</summary>
    public static JobResult?[] Find(ImmutableArray<Job> jobs, EarlierPlan? earlier)
    {
        if (earlier is null)
            return new JobResult?[jobs.Length];
        var before = Fitting.Split(earlier.Request).Jobs;
        return [.. jobs.Select(job => before.FirstOrDefault(one => Same(one, job)) is null ? null : Answer(job, earlier))];
    }

    private static bool Same(Job a, Job b) =>
        a.Material == b.Material
        && a.Saw == b.Saw
        && a.Keep == b.Keep
        && a.Stock.SequenceEqual(b.Stock)
        && a.Parts.SequenceEqual(b.Parts);

    private static JobResult? Answer(Job job, EarlierPlan earlier)
    {
        var parts = job.Parts.Select(part => part.Id).ToHashSet();
        if (earlier.Plan.Unplaced.Any(one => parts.Contains(one.Part)))
            return null;
        var weights = job.Stock.ToDictionary(stock => stock.Id, job.Weight);
        ImmutableArray<Layout> layouts = [.. earlier.Plan.Layouts.Where(layout => weights.ContainsKey(layout.Stock))];
        var cost = layouts.Sum(layout => weights[layout.Stock] * layout.Copies);
        // A whole plan that is proven is proven material by material; of another, the share of its bound is not known.
        var bound = earlier.Plan.Status == PlanStatus.Proven && !job.IsUnpriced ? cost : 0;
        return new([], [.. job.Parts.Select(_ => 0)], cost, bound, false) { Kept = layouts };
    }
}
