using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage.Rows;

internal sealed class StoredProject : IVersioned
{
    public required Guid Id { get; init; }

    public required string Name { get; set; }

    public required string Code { get; set; }

    public LengthUnit Unit { get; set; }

    /// <summary>Whether it is archived; where it stood before is kept.</summary>
    public bool IsArchived { get; set; }

    /// <summary>The state that a person set; null where plans and cuts tell it. All else about a state is derived.</summary>
    public ProjectState? SetState { get; set; }

    /// <summary>Where plans and cuts put it when a person set its state.</summary>
    public ProjectState SetFrom { get; set; }

    /// <summary>The build in which a person set its state; 0 where an older program stored it and it is not settled
    /// yet.</summary>
    public int SetBuild { get; set; }

    public string Note { get; set; } = "";

    /// <summary>Order of making, by a counter: a clock that jumps does not reorder the list.</summary>
    public long Number { get; init; }

    public DateTime MadeUtc { get; init; }

    /// <summary>When it was put into the trash; null for one that is there. Queries leave those in the trash out, unless
    /// they ask for them.</summary>
    public DateTime? DeletedUtc { get; set; }

    public int Version { get; set; }
}
