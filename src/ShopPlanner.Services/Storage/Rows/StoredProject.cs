using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage.Rows;

internal sealed class StoredProject : IVersioned
{
    public required Guid Id { get; init; }

    public required string Name { get; set; }

    public required string Code { get; set; }

    public LengthUnit Unit { get; set; }

    public ProjectState State { get; set; }

    public string Note { get; set; } = "";

    /// <summary>Order of making, by a counter: a clock that jumps does not reorder the list.</summary>
    public long Number { get; init; }

    public DateTime MadeUtc { get; init; }

    /// <summary>When it was put into the trash; null for one that is there. Queries leave those in the trash out, unless
    /// they ask for them.</summary>
    public DateTime? DeletedUtc { get; set; }

    public int Version { get; set; }
}
