using Microsoft.EntityFrameworkCore;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Projects;

/// <summary>Reads where projects stand from what is stored beside the documents of their plans.</summary>
internal sealed class ProjectStandings
{
    private readonly ILookup<Guid, PlanFact> plans;
    private readonly ILookup<Guid, HeldRowFact> held;

    private ProjectStandings(ILookup<Guid, PlanFact> plans, ILookup<Guid, HeldRowFact> held) =>
        (this.plans, this.held) = (plans, held);

    /// <summary>Reads what happened to some projects, or to all of them, in two questions at most.</summary>
    /// <param name="db">The database.</param>
    /// <param name="projects">Which; null for all.</param>
    /// <param name="cancel">Stops the reading.</param>
    public static async Task<ProjectStandings> LoadAsync(
        ShopContext db,
        IReadOnlyCollection<Guid>? projects,
        CancellationToken cancel
    )
    {
        var plans = (await FactsAsync(db, projects, cancel)).ToLookup(plan => plan.Project);
        var cut = plans.SelectMany(own => CutOf(new ProjectFacts([.. own], false))).ToHashSet();
        var held = cut.Count == 0 ? [] : await HeldRows.LoadAsync(db, cut, cancel);
        return new(plans, held.ToLookup(part => part.Row));
    }

    /// <summary>Returns in which build each project is planned next.</summary>
    public static async Task<Dictionary<Guid, int>> NextBuildsAsync(
        ShopContext db,
        IReadOnlyCollection<Guid> projects,
        CancellationToken cancel
    )
    {
        var standings = await LoadAsync(db, projects, cancel);
        var next = new Dictionary<Guid, int>();
        foreach (var project in await db.Projects.AsNoTracking().Where(one => projects.Contains(one.Id)).ToListAsync(cancel))
        {
            // Only a project that is archived, or was set to done, needs its parts read.
            var (state, build) = (ProjectState.Planning, standings.Facts(project.Id, []).Build);
            if (project.IsArchived || project.SetState == ProjectState.Done)
                state = (await standings.OfAsync(db, project, cancel)).State;
            next.Add(project.Id, ProjectStates.NextBuild(state, build));
        }

        return next;
    }

    /// <summary>Returns where a project stands.</summary>
    /// <param name="project">The project.</param>
    /// <param name="rows">Its parts list, read.</param>
    public ProjectStanding Of(StoredProject project, IReadOnlyList<PartRow> rows)
    {
        var facts = Facts(project.Id, rows);
        var told = ProjectStates.Told(facts);
        var state = project.IsArchived ? ProjectState.PutAway : ProjectStates.Of(told, facts.Build, HandState.Of(project));
        return new(state, told, facts.Progress) { Build = facts.Build };
    }

    /// <summary>Returns where a project stands by its parts list as it is stored.</summary>
    public async Task<ProjectStanding> OfAsync(ShopContext db, StoredProject project, CancellationToken cancel)
    {
        var parts = await PartRows.Of(db, project.Id).AsNoTracking().ToListAsync(cancel);
        return Of(project, PartRows.Read(project, parts, await MaterialIndex.LoadAsync(db, cancel)));
    }

    private static Task<List<PlanFact>> FactsAsync(ShopContext db, IReadOnlyCollection<Guid>? projects, CancellationToken cancel)
    {
        var own = projects is null ? db.PlanProjects : db.PlanProjects.Where(one => projects.Contains(one.ProjectId));
        var facts =
            from one in own
            join plan in db.Plans on one.PlanId equals plan.Id
            join buy in LeftToBuy.Of(db) on plan.Id equals buy.PlanId
            select new PlanFact
            {
                Project = one.ProjectId,
                Plan = plan.Id,
                State = plan.State,
                Build = one.Build,
                LeftToBuy = buy.Left,
                Progress = new CutProgress(
                    db.Cuts.Count(cut => cut.PlanId == plan.Id && cut.Made),
                    plan.Cuts,
                    db.Finishes.Count(finish => finish.PlanId == plan.Id && finish.Standing),
                    plan.Stocks
                ),
            };
        return facts.ToListAsync(cancel);
    }

    // What such a project's plans hold matters only where nothing is left to cut.
    private static IEnumerable<Guid> CutOf(ProjectFacts facts) =>
        facts.OfBuild.Any(plan => plan.IsOpen)
            ? []
            : facts.OfBuild.Where(plan => plan.State == PlanState.Cut).Select(plan => plan.Plan);

    private ProjectFacts Facts(Guid project, IReadOnlyList<PartRow> rows)
    {
        var facts = new ProjectFacts([.. plans[project]], false);
        var cut = CutOf(facts).ToHashSet();
        return facts with { HoldsAllParts = cut.Count > 0 && rows.All(row => IsHeld(row, cut)) };
    }

    // A plan counts the pieces that were cut before it was made, so the most that one of them holds is what there is. A row that
    // cannot be read is in no plan.
    private bool IsHeld(PartRow row, HashSet<Guid> cut) =>
        row.Part is { } part
        && held[row.Texts.Id]
            .Where(one => cut.Contains(one.Plan))
            .Any(one =>
                (one.Material, one.Length, one.Width) == (part.Material, part.Length, part.Width) && one.Pieces >= part.Quantity
            );
}
