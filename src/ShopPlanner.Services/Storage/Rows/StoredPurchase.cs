using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A board or sheet that was paid for, and the plan it was bought for. One taken back stays, no longer
/// standing.</summary>
internal sealed class StoredPurchase
{
    public required Guid Id { get; init; }

    /// <summary>Order of buying, by a counter.</summary>
    public long Number { get; init; }

    public required Guid PlanId { get; init; }

    /// <summary>The stock's id in the plan's request.</summary>
    public required string Stock { get; init; }

    /// <summary>Which piece of that stock it is, from 1. Two devices that tick the same one buy it once: the database itself
    /// refuses a second that stands.</summary>
    public int Place { get; set; }

    public required Guid PieceId { get; init; }

    public Money Price { get; set; }

    /// <summary>The store's name when it was bought.</summary>
    public string Store { get; init; } = "";

    /// <summary>The finish at the bench that entered it as bought; null where it was ticked on the shopping list.</summary>
    public Guid? FinishId { get; init; }

    public bool Standing { get; set; }

    public DateTime WhenUtc { get; init; }

    public string Device { get; init; } = "";
}

/// <summary>What else a project needs bought, as far as somebody said something about it: the design's hardware by its name, and
/// lines of the builder's own.</summary>
internal sealed class StoredSupply
{
    public required Guid ProjectId { get; init; }

    /// <summary>The name folded for comparing; unique in its project.</summary>
    public required string Key { get; init; }

    /// <summary>Order of a project's own lines, by a counter.</summary>
    public long Number { get; init; }

    public string Name { get; set; } = "";

    /// <summary>How much, as typed; empty for a line of the design, which counts for itself.</summary>
    public string Amount { get; set; } = "";

    /// <summary>Whether the builder wrote the line; else the design asks for it.</summary>
    public bool Own { get; init; }

    /// <summary>Of the whole line; null where nobody said.</summary>
    public Money? Price { get; set; }

    public bool Bought { get; set; }

    public DateTime WhenUtc { get; set; }

    public string Device { get; set; } = "";
}
