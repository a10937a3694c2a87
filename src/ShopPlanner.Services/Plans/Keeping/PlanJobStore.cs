using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Plans.Keeping;

/// <summary>Planning runs as kept in the database.</summary>
internal static class PlanJobStore
{
    /// <summary>Why a run has no plan when the program ended first.</summary>
    public static Fault CutShort { get; } =
        new("planner", "the run", "has no plan, because Shop Planner was stopped first: plan again");

    /// <summary>Marks the runs that an earlier program left open as stopped, with the reason: they do not go on.</summary>
    public static Task StopAbandonedAsync(ShopContext db, CancellationToken cancel)
    {
        var why = FaultsDocument.Write([CutShort]);
        return db
            .Jobs.Where(job => job.State == PlanJobState.Waiting || job.State == PlanJobState.Running)
            .ExecuteUpdateAsync(
                set => set.SetProperty(job => job.State, PlanJobState.Stopped).SetProperty(job => job.FaultsJson, why),
                cancel
            );
    }
}
