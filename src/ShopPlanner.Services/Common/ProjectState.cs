namespace ShopPlanner.Services.Common;

/// <summary>Where a project stands.</summary>
public enum ProjectState
{
    /// <summary>Being thought out.</summary>
    Planning,

    /// <summary>On the bench.</summary>
    Building,

    /// <summary>Finished.</summary>
    Finished,

    /// <summary>Archived by the user; can be restored.</summary>
    PutAway,
}
