namespace ShopPlanner.Cli;

/// <summary>What a command tells the shell; the same for every command.</summary>
internal static class ExitStatus
{
    /// <summary>The planner itself is at fault: its plan did not pass the verifier, and nothing was written.</summary>
    public const int Failed = 1;

    /// <summary>All that was asked is done.</summary>
    public const int Done = 0;

    /// <summary>What was asked is wrong, or a file cannot be read or written; nothing was written.</summary>
    public const int Refused = 2;

    /// <summary>A plan was written, but parts remain without a place; or it says that there is no schedule, and why.</summary>
    public const int Incomplete = 3;
}
