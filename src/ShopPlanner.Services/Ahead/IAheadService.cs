using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Services.Ahead;

/// <summary>A step that comes next in a project.</summary>
/// <param name="Project">The project.</param>
/// <param name="ProjectName">Its name.</param>
/// <param name="Page">Where it is described.</param>
/// <param name="Title">What to do.</param>
/// <param name="WaitsFor">The step that has to cure first; empty where it can be done now.</param>
/// <param name="UntilUtc">When that one has cured; null where it can be done now.</param>
public sealed record NextStep(Guid Project, string ProjectName, WorkPage Page, string Title, string WaitsFor, DateTime? UntilUtc);

/// <summary>What is done and has to be left alone still.</summary>
/// <param name="Project">The project.</param>
/// <param name="ProjectName">Its name.</param>
/// <param name="Page">Where the step is described.</param>
/// <param name="Title">The step.</param>
/// <param name="What">What has to pass: <c>glue in clamps</c>.</param>
/// <param name="UntilUtc">When it has passed, at the earliest: the label in hand comes before it.</param>
public sealed record CuringStep(Guid Project, string ProjectName, WorkPage Page, string Title, string What, DateTime UntilUtc);

/// <summary>What to buy at one store, for all open plans.</summary>
/// <param name="Store">The store's name.</param>
/// <param name="Stocks">Boards and sheets.</param>
/// <param name="Left">What they cost at the prices known now.</param>
/// <param name="For">The plans that they are for, with their names.</param>
public sealed record TripAhead(string Store, int Stocks, Money Left, ImmutableArray<(Guid Plan, string Name)> For);

/// <summary>Other things to buy for a project.</summary>
/// <param name="Project">The project.</param>
/// <param name="ProjectName">Its name.</param>
/// <param name="Lines">How many lines of its list are not bought.</param>
public sealed record SuppliesAhead(Guid Project, string ProjectName, int Lines);

/// <summary>What is ahead in the shop.</summary>
/// <param name="Steps">The next steps of each project that is built or finished; those that can be done now first.</param>
/// <param name="Curing">What cures, by when it is done.</param>
/// <param name="Trips">What to buy, by store.</param>
/// <param name="Supplies">What else to buy, by project.</param>
public sealed record WorkAhead(
    ImmutableArray<NextStep> Steps,
    ImmutableArray<CuringStep> Curing,
    ImmutableArray<TripAhead> Trips,
    ImmutableArray<SuppliesAhead> Supplies
)
{
    /// <summary>Whether there is nothing ahead.</summary>
    public bool IsEmpty => Steps.IsEmpty && Curing.IsEmpty && Trips.IsEmpty && Supplies.IsEmpty;
}

/// <summary>Tells what is ahead: next steps, what to buy on the way, what cures and what waits for it.</summary>
public interface IAheadService
{
    /// <summary>What is ahead now.</summary>
    Task<WorkAhead> GetAsync(CancellationToken cancel = default);
}
