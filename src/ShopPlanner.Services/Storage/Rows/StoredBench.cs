namespace ShopPlanner.Services.Storage.Rows;

/// <summary>Whether a cut of one copy of a layout is made.</summary>
internal sealed class StoredCut
{
    public required Guid PlanId { get; init; }

    public int Layout { get; init; }

    public int Copy { get; init; }

    public int Cut { get; init; }

    public bool Made { get; set; }

    public DateTime WhenUtc { get; set; }

    public string Device { get; set; } = "";
}

/// <summary>A board or sheet that was cut up; a finish taken back stays, no longer standing.</summary>
internal sealed class StoredFinish
{
    public required Guid Id { get; init; }

    public required Guid PlanId { get; init; }

    public int Layout { get; init; }

    public int Copy { get; init; }

    public bool Standing { get; set; }

    public DateTime WhenUtc { get; init; }

    public string Device { get; init; } = "";

    /// <summary>The wrong cut for which the board was stopped; null where it was finished by itself.</summary>
    public Guid? WrongCutId { get; init; }
}

/// <summary>Pieces of a row that a finished board or sheet was to give and did not.</summary>
internal sealed class StoredLeftOut
{
    public required Guid FinishId { get; init; }

    public required Guid PlanId { get; init; }

    /// <summary>The row of the parts list, which may be gone.</summary>
    public required Guid RowId { get; init; }

    public int Pieces { get; set; }
}

/// <summary>A command that was done, so that the same command sent again changes nothing.</summary>
internal sealed class StoredCommand
{
    public required Guid Id { get; init; }

    /// <summary>What was asked, so that an id used for something else is noticed.</summary>
    public required string Asked { get; init; }

    /// <summary>What it made, so that it is found when the command is sent again; empty where an older program did it.</summary>
    public string Made { get; init; } = "";

    public DateTime WhenUtc { get; init; }
}

/// <summary>The latest that a sender said about a thing.</summary>
internal sealed class StoredTurn
{
    public required Guid Sender { get; init; }

    /// <summary>What it is about, in full.</summary>
    public required string Subject { get; init; }

    /// <summary>The command's number among those of its sender.</summary>
    public long Number { get; set; }

    public DateTime WhenUtc { get; set; }
}
