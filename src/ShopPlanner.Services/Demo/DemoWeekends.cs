using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Demo;

/// <summary>Says when the demo's people work, and with what.</summary>
internal static class DemoWeekends
{
    private const string File = "weekends.json";

    /// <summary>Stores it; somebody who set hours before keeps them.</summary>
    /// <param name="db">The shop.</param>
    /// <param name="demo">As the file has it.</param>
    /// <param name="projects">The demo's projects, by the key of their design.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ShopStartException">An hour or a number cannot be read.</exception>
    public static async Task AddAsync(
        ShopContext db,
        DemoHours demo,
        IReadOnlyDictionary<string, Guid> projects,
        CancellationToken cancel
    )
    {
        if (await WeekendRows.ReadAsync(db, cancel) is not null)
            return;
        var unknown = demo.LeftOut.Where(key => !projects.ContainsKey(key));
        DemoSeed.Refuse(File, unknown.Select(key => Fault.Of("leftOut", key, "is not a project of the demo")));
        var wanted = WeekendDocument.Usual with
        {
            Hours = demo.Hours,
            People = demo.People,
            Clamps = demo.Clamps,
            Drying = demo.Drying,
            Wishes = [.. demo.LeftOut.Select(key => new StoredWish(projects[key], ProjectWish.Usual, "", IsLeftOut: true))],
        };
        var reader = new HoursReader("UTC");
        _ = (reader.Calendar(wanted), reader.Hands(wanted));
        DemoSeed.Refuse(File, reader.Faults);
        await WeekendRows.StoreAsync(db, null, wanted, cancel);
    }
}
