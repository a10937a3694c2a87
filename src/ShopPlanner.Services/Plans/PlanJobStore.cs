using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Plans;

/// <summary>Planning runs as kept in the database.</summary>
internal static class PlanJobStore
{
    /// <summary>Runs that a stopped or killed program left open will not go on.</summary>
    public static Task StopAbandonedAsync(ShopContext db, CancellationToken cancel) =>
        db
            .Jobs.Where(job => job.State == PlanJobState.Waiting || job.State == PlanJobState.Running)
            .ExecuteUpdateAsync(set => set.SetProperty(job => job.State, PlanJobState.Stopped), cancel);
}
