namespace ShopPlanner.Services.Common;

/// <summary>Where a plan stands.</summary>
public enum PlanState
{
    /// <summary>Stored; what it takes from rack and bin is promised to it.</summary>
    Ready,

    /// <summary>Some cut is ticked.</summary>
    Cutting,

    /// <summary>Every board and sheet is finished.</summary>
    Cut,

    /// <summary>Given up or replaced; its promises are released.</summary>
    Withdrawn,
}
