using System.Net;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Weekends;

/// <summary>The calendar's private address, asked as a phone does.</summary>
public sealed class WeekendFeedTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_address_gives_the_calendar_and_nothing_keeps_it()
    {
        var token = (await web.Service<IWeekendFeedService>().MakeAsync(CommandId.New(), Cancel)).Value!.Token;
        using var answer = await web.Client.GetAsync(Links.WeekendsFeed + token, Cancel);
        Assert.Equal((HttpStatusCode.OK, "text/calendar"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.StartsWith("BEGIN:VCALENDAR", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        Assert.True(answer.Headers.CacheControl!.NoStore);
        Assert.Equal("noindex, nofollow", Assert.Single(answer.Headers.GetValues("X-Robots-Tag")));
        using var sent = await web.Client.PostAsync(Links.WeekendsFeed + token, null, Cancel);
        Assert.False(sent.IsSuccessStatusCode);
        var foreign = await web.SendAsync("GET", Links.WeekendsFeed + token, "elsewhere.example", null);
        Assert.Equal(421, foreign.Status);
    }

    [Fact]
    public async Task A_wrong_address_is_answered_as_any_page_that_is_not_there()
    {
        var old = (await web.Service<IWeekendFeedService>().MakeAsync(CommandId.New(), Cancel)).Value!.Token;
        await web.Service<IWeekendFeedService>().MakeAsync(CommandId.New(), Cancel);
        foreach (var wrong in new[] { old, new string('0', 32), "x" })
        {
            using var answer = await web.Client.GetAsync(Links.WeekendsFeed + wrong, Cancel);
            using var nowhere = await web.Client.GetAsync("/nowhere/" + wrong, Cancel);
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
            Assert.Equal(nowhere.Content.Headers.ContentType, answer.Content.Headers.ContentType);
            Assert.Equal(nowhere.Headers.CacheControl, answer.Headers.CacheControl);
        }
    }
}
