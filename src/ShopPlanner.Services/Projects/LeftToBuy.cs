using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Projects;

/// <summary>What of a plan's new stock is still to be bought.</summary>
internal sealed class PlanToBuy
{
    public Guid PlanId { get; init; }

    /// <summary>Boards and sheets.</summary>
    public int Left { get; init; }
}

/// <summary>
/// What is left to buy of plans: the only place that the states of projects ask. What was bought for a plan and is in the
/// rack for
/// it, or cut up for it, is not bought again.
/// </summary>
internal static class LeftToBuy
{
    /// <summary>Returns a line for each plan, as a question that others can be joined to.</summary>
    public static IQueryable<PlanToBuy> Of(ShopContext db) =>
        db.Plans.Select(plan => new PlanToBuy
        {
            PlanId = plan.Id,
            Left =
                plan.ToBuy
                - db.Purchases.Count(bought =>
                    bought.PlanId == plan.Id
                    && bought.Standing
                    && (
                        db.Promises.Any(one => one.PieceId == bought.PieceId && one.PlanId == plan.Id && one.Active)
                        || db.Entries.Any(entry =>
                            entry.PieceId == bought.PieceId
                            && entry.Kind == StockEntryKind.Cut
                            && db.Finishes.Any(one => one.Id == entry.FinishId && one.PlanId == plan.Id && one.Standing)
                        )
                    )
                ),
        });
}
