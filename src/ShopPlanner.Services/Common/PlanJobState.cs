namespace ShopPlanner.Services.Common;

/// <summary>Where a planning run stands.</summary>
public enum PlanJobState
{
    /// <summary>Waiting its turn.</summary>
    Waiting,

    /// <summary>Looking.</summary>
    Running,

    /// <summary>Done; the plan is stored.</summary>
    Done,

    /// <summary>Stopped before there was a plan; the faults say so where the program ended first.</summary>
    Stopped,

    /// <summary>Could not be done; the faults say why.</summary>
    Failed,
}
