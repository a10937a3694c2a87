using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>The plan that a project is cut by.</summary>
internal static class OpenPlan
{
    /// <summary>Returns the plan that is being cut, else the newest that can be cut, else the newest that was cut; null without
    /// any.</summary>
    /// <param name="plans">Newest first.</param>
    /// <param name="project">The project.</param>
    public static PlanSummary? Of(IEnumerable<PlanSummary> plans, Guid project)
    {
        var own = plans.Where(plan => plan.Projects.Contains(project) && plan.State != PlanState.Withdrawn).ToList();
        return own.FirstOrDefault(plan => plan.State == PlanState.Cutting) ?? own.FirstOrDefault(IsOpen) ?? own.FirstOrDefault();
    }

    /// <summary>Returns whether there is something left to cut.</summary>
    public static bool IsOpen(PlanSummary plan) => plan.State is PlanState.Ready or PlanState.Cutting;
}
