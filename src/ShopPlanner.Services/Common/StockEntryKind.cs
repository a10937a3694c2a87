namespace ShopPlanner.Services.Common;

/// <summary>What a ledger entry says.</summary>
public enum StockEntryKind
{
    /// <summary>Bought and put in the rack.</summary>
    Bought,

    /// <summary>Found in the shop and written down.</summary>
    Logged,

    /// <summary>A leftover put in the bin after cutting.</summary>
    Binned,

    /// <summary>Measured again.</summary>
    Corrected,

    /// <summary>Cut up.</summary>
    Cut,

    /// <summary>Thrown away or given away.</summary>
    Discarded,

    /// <summary>Takes an earlier entry back.</summary>
    Undone,

    /// <summary>Taken back to the store, or not bought after all; the money came back with it.</summary>
    Returned,

    /// <summary>Bad places or edges as bought were noted; the size stayed.</summary>
    Inspected,

    /// <summary>Taken out of the bin or the rack, to be used without a plan.</summary>
    Taken,

    /// <summary>Put back after it was taken out.</summary>
    PutBack,
}
