using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Weekends;

/// <summary>Files that the schedule gives.</summary>
internal static class WeekendDownloads
{
    /// <summary>Maps the address.</summary>
    public static void MapWeekendDownloads(this IEndpointRouteBuilder routes) =>
        routes.MapGet(Links.WeekendsCalendar, CalendarAsync);

    private static async Task<FileContentHttpResult> CalendarAsync(IWeekendService weekends, CancellationToken cancel) =>
        Download.Text(await weekends.CalendarAsync(cancel), "text/calendar", "schedule", "ics");
}
