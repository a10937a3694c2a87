namespace ShopPlanner.Services.Access;

/// <summary>What a signed-in browser may do.</summary>
public enum AccessRole
{
    /// <summary>Everything.</summary>
    Owner,

    /// <summary>The bench: see plans, mark cuts and steps, measure leftovers, look after the bin. Nothing else.</summary>
    Bench,

    /// <summary>The household: read shopping lists and mark what was bought. Nothing else.</summary>
    Household,
}
