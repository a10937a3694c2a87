using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Weekends;

internal sealed class WeekendFeedService(ShopWork work, ShopCommands commands, IWeekendService weekends) : IWeekendFeedService
{
    public Task<WeekendFeed> GetAsync(CancellationToken cancel = default) => work.ReadAsync(db => FeedAsync(db, cancel), cancel);

    public Task<Outcome<WeekendFeed>> MakeAsync(CommandId command, CancellationToken cancel = default) =>
        commands.RunAsync(
            new Making<WeekendFeed>(command, CommandTexts.Asked("calendar feed"))
            {
                Make = db => SetAsync(db, Secrets.Link(), cancel),
                // The secret stands in one place.
                Made = _ => "",
                Find = async (db, _) => await FeedAsync(db, cancel),
                What = "calendar feed",
            },
            cancel
        );

    public Task<Outcome<WeekendFeed>> StopAsync(CancellationToken cancel = default) =>
        work.WriteAsync(db => SetAsync(db, "", cancel), cancel);

    public async Task<string?> CalendarAsync(string token, CancellationToken cancel = default)
    {
        var feed = await GetAsync(cancel);
        return feed.Token.Length > 0 && Secrets.AreSame(feed.Token, token) ? await weekends.CalendarAsync(cancel) : null;
    }

    private static async Task<WeekendFeed> FeedAsync(ShopContext db, CancellationToken cancel) =>
        new(WeekendRows.Document(await WeekendRows.ReadAsync(db, cancel)).Feed);

    private static async Task<Outcome<WeekendFeed>> SetAsync(ShopContext db, string token, CancellationToken cancel)
    {
        var row = await WeekendRows.ReadAsync(db, cancel);
        await WeekendRows.StoreAsync(db, row, WeekendRows.Document(row) with { Feed = token }, cancel);
        return new WeekendFeed(token);
    }
}
