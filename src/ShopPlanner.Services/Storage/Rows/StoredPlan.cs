using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A plan as a snapshot: the documents never change after they are stored.</summary>
internal sealed class StoredPlan : IVersioned
{
    public required Guid Id { get; init; }

    public long Number { get; init; }

    public required string Name { get; init; }

    public DateTime MadeUtc { get; init; }

    public PlanState State { get; set; }

    public PlanStatus Status { get; init; }

    public Money Cost { get; init; }

    public int Stocks { get; init; }

    /// <summary>Cuts of all its boards and sheets.</summary>
    public int Cuts { get; init; }

    /// <summary>Boards and sheets of new stock.</summary>
    public int ToBuy { get; init; }

    public required string OrderJson { get; init; }

    public required string RequestJson { get; init; }

    public required string PlanJson { get; init; }

    public required string NamesJson { get; init; }

    public required string RequestHash { get; init; }

    public required string PlannerVersion { get; init; }

    /// <summary>The project with which it went into the trash; null for a plan that was given up by itself or not at
    /// all.</summary>
    public Guid? WithdrawnWith { get; set; }

    public int Version { get; set; }
}

/// <summary>What a plan was held against when it was made: its projects planned alone, the stores it could have bought at. Kept
/// apart from the plan, since no list of plans asks for it.</summary>
internal sealed class StoredComparison
{
    public required Guid PlanId { get; init; }

    /// <summary>JSON; it never changes after it is stored.</summary>
    public required string Document { get; init; }
}

/// <summary>A project of a plan, so that neither a list of plans nor the plans of a project need open the documents.</summary>
internal sealed class StoredPlanProject
{
    public required Guid PlanId { get; init; }

    public required Guid ProjectId { get; init; }

    /// <summary>Among the plan's projects as ordered, from 0.</summary>
    public int Position { get; init; }

    /// <summary>Which time the project is built, from 1: planned after it was done, it is built again.</summary>
    public int Build { get; init; } = 1;
}

/// <summary>A row of a parts list as a plan holds it, so that what no plan holds is known without the documents.</summary>
internal sealed class StoredPlanPart
{
    public required Guid PlanId { get; init; }

    /// <summary>The row of the parts list, which may be gone.</summary>
    public required Guid RowId { get; init; }

    public required string MaterialId { get; init; }

    public Length Length { get; init; }

    public Length Width { get; init; }

    /// <summary>Pieces that it places, and those that were cut before it was made.</summary>
    public int Pieces { get; init; }
}

/// <summary>A planning run, kept so that its end is known after the server was stopped.</summary>
internal sealed class StoredJob
{
    public required Guid Id { get; init; }

    public long Number { get; init; }

    public PlanJobState State { get; set; }

    public required string OrderJson { get; init; }

    public int Seconds { get; init; }

    public Guid? PlanId { get; set; }

    public string FaultsJson { get; set; } = "[]";
}
