namespace ShopPlanner.Services.Common;

/// <summary>Where a project stands, in the order of the work. Plans, purchases and cuts move it; a person can correct
/// it.</summary>
public enum ProjectState
{
    /// <summary>Being thought out: nothing is planned, or its parts list holds pieces that no plan has.</summary>
    Planning,

    /// <summary>Its plan is stored, and some of what the plan buys is not bought yet.</summary>
    Buying,

    /// <summary>Everything is there to cut, or cutting has begun.</summary>
    Cutting,

    /// <summary>Every board and sheet of its plan is finished: it is being put together.</summary>
    Building,

    /// <summary>Getting its paint or varnish. Set by hand.</summary>
    Finishing,

    /// <summary>In use. Set by hand.</summary>
    Done,

    /// <summary>Archived by the user; can be restored.</summary>
    PutAway,
}
