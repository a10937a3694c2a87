using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Projects;

/// <summary>A plan, as far as the states of its projects rest on it.</summary>
internal sealed record PlanFact
{
    /// <summary>The project that is asked about; a plan of several is told once for each.</summary>
    public required Guid Project { get; init; }

    public required Guid Plan { get; init; }

    public required PlanState State { get; init; }

    /// <summary>Which time the project is built, from 1.</summary>
    public int Build { get; init; } = 1;

    /// <summary>Boards and sheets of new stock that are not bought yet.</summary>
    public int LeftToBuy { get; init; }

    public CutProgress Progress { get; init; } = CutProgress.None;

    /// <summary>Whether the plan counts: it was not given up.</summary>
    public bool Stands => State != PlanState.Withdrawn;

    /// <summary>Whether there is something left to cut. A plan that places nothing is none.</summary>
    public bool IsOpen => State is PlanState.Ready or PlanState.Cutting && Progress.Stocks > 0;
}

/// <summary>What happened to a project.</summary>
/// <param name="Plans">Its plans, those that were given up too.</param>
/// <param name="HoldsAllParts">Whether the plans that are all cut hold every piece of its parts list.</param>
internal sealed record ProjectFacts(IReadOnlyList<PlanFact> Plans, bool HoldsAllParts)
{
    /// <summary>Which time the project is built, from 1: the newest build that a plan stands for.</summary>
    public int Build => Plans.Where(plan => plan.Stands).Select(plan => plan.Build).DefaultIfEmpty(1).Max();

    /// <summary>The plans of this build.</summary>
    public IEnumerable<PlanFact> OfBuild => Plans.Where(plan => plan.Build == Build);

    /// <summary>The cuts of this build. Of a plan that was given up, what was cut counts, and what was not does not.</summary>
    public CutProgress Progress =>
        OfBuild
            .Select(plan => plan.Stands ? plan.Progress : plan.Progress.Done())
            .Aggregate(CutProgress.None, (sum, one) => sum + one);
}
