using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Weekends;

/// <summary>Files that the schedule gives.</summary>
internal static class WeekendDownloads
{
    /// <summary>Maps the addresses.</summary>
    public static void MapWeekendDownloads(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(Links.WeekendsCalendar, CalendarAsync);
        routes.MapGet(Links.WeekendsFeed + "{token}", FeedAsync);
    }

    // Kept nowhere on the way, and found by no search: whoever has the address can read it.
    private static async Task<Results<FileContentHttpResult, NotFound>> FeedAsync(
        string token,
        IWeekendFeedService feeds,
        HttpResponse response,
        CancellationToken cancel
    )
    {
        if (await feeds.CalendarAsync(token, cancel) is not { } calendar)
            return TypedResults.NotFound();
        response.Headers.CacheControl = "no-store";
        response.Headers["X-Robots-Tag"] = "noindex, nofollow";
        return Download.Text(calendar, "text/calendar", "schedule", "ics");
    }

    private static async Task<FileContentHttpResult> CalendarAsync(IWeekendService weekends, CancellationToken cancel) =>
        Download.Text(await weekends.CalendarAsync(cancel), "text/calendar", "schedule", "ics");
}
