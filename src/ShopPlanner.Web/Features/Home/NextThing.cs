using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Home;

/// <summary>What a project waits for.</summary>
/// <param name="Words">As a verb.</param>
/// <param name="Link">Where it is done.</param>
internal sealed record NextThing(string Words, string Link)
{
    /// <summary>The next thing to do for a project, given the plans that stand.</summary>
    public static NextThing For(ProjectView project, IReadOnlyList<PlanSummary> plans)
    {
        if (project.PartKinds == 0)
            return new("Write down its parts", Links.Parts(project.Id));
        if (project.FaultyRows > 0)
            return new($"Look at {Shared.Words.Count(project.FaultyRows, "row")}", Links.Parts(project.Id));
        var plan = plans.FirstOrDefault(plan => plan.Projects.Contains(project.Id));
        return plan is null ? new("Plan the cuts", Links.NewPlan([project.Id])) : new("Its cut plan", Links.Plan(plan.Id));
    }
}
