using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Ahead;

internal sealed class AheadService(
    IProjectService projects,
    IWorkService work,
    IPlanService plans,
    IBuyingService buying,
    TimeProvider clock
) : IAheadService
{
    // More than these are read on the project's own page.
    private const int StepsOfProject = 2;

    public async Task<WorkAhead> GetAsync(CancellationToken cancel = default)
    {
        var steps = new List<NextStep>();
        var curing = new List<CuringStep>();
        foreach (var project in await projects.ListAsync(cancel: cancel))
            if (
                project.State is ProjectState.Building or ProjectState.Finishing
                && await work.GetAsync(project.Id, cancel) is { } view
            )
            {
                var own = Curing(project, view);
                curing.AddRange(own.Select(one => one.Curing));
                steps.AddRange(Next(project, view, own));
            }

        var lists = await ListsAsync(cancel);
        return new WorkAhead(
            [.. steps.OrderBy(step => step.UntilUtc ?? DateTime.MinValue)],
            [.. curing.OrderBy(one => one.UntilUtc)],
            Trips(lists),
            Supplies(lists)
        );
    }

    private List<(WorkStepView Step, CuringStep Curing)> Curing(ProjectView project, WorkView view)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        var curing = new List<(WorkStepView, CuringStep)>();
        foreach (var step in view.Steps.Where(step => step.Mark == StepMark.Done))
            if (step is { DoneUtc: { } done, Step.Wait: { } wait } && done.AddMinutes(wait.Minutes) is var until && until > now)
                curing.Add((step, new(project.Id, project.Name, PageOf(step), step.Title, wait.What, until)));
        return curing;
    }

    private static IEnumerable<NextStep> Next(
        ProjectView project,
        WorkView view,
        IReadOnlyList<(WorkStepView Step, CuringStep Curing)> curing
    ) =>
        view
            .Steps.Where(step => step.Mark == StepMark.Open && step.WaitsFor.IsEmpty)
            .Select(step =>
            {
                var last = curing
                    .Where(one => step.Step.After.Contains(one.Step.Step.Id))
                    .Select(one => one.Curing)
                    .MaxBy(one => one.UntilUtc);
                return new NextStep(project.Id, project.Name, PageOf(step), step.Title, last?.Title ?? "", last?.UntilUtc);
            })
            .OrderBy(step => step.UntilUtc is not null)
            .Take(StepsOfProject);

    private static WorkPage PageOf(WorkStepView step) =>
        WorkPages.Has(WorkPage.Build, step.Step.Phase) ? WorkPage.Build : WorkPage.Finish;

    private async Task<List<ShoppingList>> ListsAsync(CancellationToken cancel)
    {
        var lists = new List<ShoppingList>();
        foreach (var plan in await plans.ListAsync(cancel: cancel))
            if (plan.State is PlanState.Ready or PlanState.Cutting && await buying.OfPlanAsync(plan.Id, cancel) is { } list)
                lists.Add(list);
        return lists;
    }

    private static ImmutableArray<TripAhead> Trips(IEnumerable<ShoppingList> lists) =>
        [
            .. lists
                .SelectMany(list =>
                    list.Stores.Select(store => (List: list, Store: store, Left: store.Lines.Sum(line => line.Left)))
                )
                .Where(one => one.Left > 0)
                .GroupBy(one => one.Store.Name, StringComparer.Ordinal)
                .OrderBy(own => own.Key, StringComparer.OrdinalIgnoreCase)
                .Select(own => new TripAhead(
                    own.Key,
                    own.Sum(one => one.Left),
                    own.Aggregate(Money.Zero, (sum, one) => sum + one.Store.Left),
                    [.. own.Select(one => (one.List.Plan!.Id, one.List.Name))]
                )),
        ];

    private static ImmutableArray<SuppliesAhead> Supplies(IEnumerable<ShoppingList> lists) =>
        [
            .. lists
                .SelectMany(list => list.Supplies)
                .DistinctBy(supplies => supplies.Project)
                .Select(supplies => new SuppliesAhead(
                    supplies.Project,
                    supplies.Name,
                    supplies.Lines.Count(line => line is { IsNeeded: true, Bought: false })
                ))
                .Where(supplies => supplies.Lines > 0),
        ];
}
