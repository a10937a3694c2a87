using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage.Rows;

/// <summary>A cut that went wrong; one taken back stays, no longer standing.</summary>
internal sealed class StoredWrongCut
{
    public required Guid Id { get; init; }

    public required Guid PlanId { get; init; }

    public int Layout { get; init; }

    public int Copy { get; init; }

    public int Cut { get; init; }

    public WrongReason Reason { get; init; }

    /// <summary>Whether saying so ticked the cut.</summary>
    public bool IsTickedByIt { get; init; }

    /// <summary>The number of the newest plan at that time: plans up to it counted on the pieces.</summary>
    public long LastPlan { get; init; }

    /// <summary>The plan of the rest that was made for it; null where nothing was planned again.</summary>
    public Guid? RestPlanId { get; set; }

    public bool Standing { get; set; }

    public DateTime WhenUtc { get; init; }

    public string Device { get; init; } = "";
}

/// <summary>A piece of a part that was cut and is of no use as that part.</summary>
internal sealed class StoredWrongPiece
{
    public required Guid WrongCutId { get; init; }

    /// <summary>Index into the pieces of the layout.</summary>
    public int Piece { get; init; }

    /// <summary>The row of the parts list, which may be gone.</summary>
    public required Guid RowId { get; init; }

    /// <summary>Whether it is a test piece, which is none of the piece of furniture.</summary>
    public bool IsPractice { get; init; }

    /// <summary>What is left of it in the bin; null where that is scrap.</summary>
    public Guid? LeftPieceId { get; set; }
}
