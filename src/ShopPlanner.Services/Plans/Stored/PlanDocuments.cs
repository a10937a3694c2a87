using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>Plans and their requests as documents of the open cut file formats.</summary>
internal static class PlanDocuments
{
    public static string Request(PlanView plan) => CutRequestJson.Write(plan.Request);

    public static string Plan(PlanView plan) => CutPlanJson.Write(plan.Plan);
}
