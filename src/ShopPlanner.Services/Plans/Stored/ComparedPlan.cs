using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>A plan with what it is held against.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Held">What it is held against.</param>
internal sealed record ComparedPlan(CutPlan Plan, HeldAgainst Held);
