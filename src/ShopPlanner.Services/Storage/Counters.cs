using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Storage;

/// <summary>Series of numbers that are never given twice, not even after what they were given to is gone.</summary>
internal static class Counters
{
    public const string BinTags = "bin tags",
        RackTags = "rack tags",
        Entries = "stock ledger",
        Projects = "projects";
    public const string Plans = "plans",
        Jobs = "plan jobs",
        PartSteps = "part steps",
        IdeaSteps = "idea steps",
        Purchases = "purchases",
        Supplies = "supplies",
        WorkChanges = "work changes";

    // Numbers are proposed a page ahead; one far beyond was never proposed.
    private const long FarthestAhead = 100;

    /// <summary>Takes a number that was proposed. False where it is far beyond what is given next.</summary>
    public static async Task<bool> TryTakeAsync(this ShopContext db, string series, long number, CancellationToken cancel)
    {
        var counter = await db.Counters.FindAsync([series], cancel);
        if (counter is null)
            db.Counters.Add(counter = new StoredCounter { Name = series });
        if (number > counter.Last + FarthestAhead)
            return false;
        counter.Last = Math.Max(counter.Last, number);
        return true;
    }

    /// <summary>The next number of a series; taken for good when the transaction is.</summary>
    public static async Task<long> NextAsync(this ShopContext db, string series, CancellationToken cancel)
    {
        var counter = await db.Counters.FindAsync([series], cancel);
        if (counter is null)
            db.Counters.Add(counter = new StoredCounter { Name = series });
        return ++counter.Last;
    }
}
