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
/// What is left to buy of plans: the only place that the states of projects ask. Nobody notes yet what was bought, so all that a
/// plan buys counts as missing until its first cut is ticked or its first board finished.
/// </summary>
internal static class LeftToBuy
{
    /// <summary>Returns a line for each plan, as a question that others can be joined to.</summary>
    public static IQueryable<PlanToBuy> Of(ShopContext db) =>
        db.Plans.Select(plan => new PlanToBuy { PlanId = plan.Id, Left = plan.ToBuy });
}
