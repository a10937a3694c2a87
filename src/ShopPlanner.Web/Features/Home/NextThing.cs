using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Projects;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Home;

/// <summary>What is next for a project.</summary>
/// <param name="Words">As a verb.</param>
/// <param name="Link">Where it is done.</param>
internal sealed record NextThing(string Words, string Link)
{
    /// <summary>Returns the next thing to do for a project, in the order of the work.</summary>
    public static NextThing For(ProjectView project, IReadOnlyList<PlanSummary> plans)
    {
        if (project.PartKinds == 0)
            return project.HasIdea
                ? new("Make the parts list", Links.Idea(project.Id))
                : new("Add its parts", Links.Parts(project.Id));
        if (project.FaultyRows > 0)
            return new($"Check {Shared.Words.Count(project.FaultyRows, "row")}", Links.Parts(project.Id));
        return OpenPlan.Of(plans, project.Id) switch
        {
            null => new("Plan the cuts", Links.NewPlan([project.Id])),
            { State: PlanState.Ready } when project.State <= ProjectState.Buying => new("See what to buy", Links.Buy(project.Id)),
            { State: PlanState.Ready } plan => new("Start cutting", Links.BenchPlan(plan.Id)),
            { State: PlanState.Cutting } plan => new("Keep cutting", Links.BenchPlan(plan.Id)),
            { Progress.HasLeftOut: true } plan => new("Plan the rest", Links.NewPlan(plan.Projects, plan.Id)),
            _ when project.State == ProjectState.Planning => new("Plan the rest", Links.NewPlan([project.Id])),
            _ when project.State == ProjectState.Building => new("Build it", Links.Build(project.Id)),
            _ when project.State == ProjectState.Finishing => new("Finish it", Links.Finish(project.Id)),
            _ => new("All cut: see the cuts", Links.Cuts(project.Id)),
        };
    }
}
