using ShopPlanner.Services.Common;
using ShopPlanner.Services.Tests.Making;
using ShopPlanner.Services.Weekends;

namespace ShopPlanner.Services.Tests.Weekends;

/// <summary>The calendar at its private address.</summary>
public sealed class WeekendFeedTests
{
    private static CancellationToken Cancel => TestShop.Cancel;

    [Fact]
    public async Task The_newest_address_alone_gives_the_calendar()
    {
        await using var project = await WorkProjects.OfDesignAsync();
        var feeds = project.Shop.Get<IWeekendFeedService>();
        Assert.Equal("", (await feeds.GetAsync(Cancel)).Token);
        Assert.Null(await feeds.CalendarAsync("", Cancel));
        var first = WorkProjects.Value(await feeds.MakeAsync(CommandId.New(), Cancel)).Token;
        Assert.Matches("^[0-9a-f]{32}$", first);
        Assert.Equal(await project.Shop.Get<IWeekendService>().CalendarAsync(Cancel), await feeds.CalendarAsync(first, Cancel));
        var second = WorkProjects.Value(await feeds.MakeAsync(CommandId.New(), Cancel)).Token;
        Assert.NotEqual(first, second);
        foreach (var wrong in new[] { first, "", second[..31], second + "0", second.ToUpperInvariant() + " ", "é" })
            Assert.Null(await feeds.CalendarAsync(wrong, Cancel));
        Assert.NotNull(await feeds.CalendarAsync(second, Cancel));
        WorkProjects.Value(await feeds.StopAsync(Cancel));
        Assert.Null(await feeds.CalendarAsync(second, Cancel));
    }

    [Fact]
    public async Task Hours_that_are_saved_leave_the_address()
    {
        await using var shop = await TestShop.OpenAsync();
        var (feeds, weekends) = (shop.Get<IWeekendFeedService>(), shop.Get<IWeekendService>());
        var token = WorkProjects.Value(await feeds.MakeAsync(CommandId.New(), Cancel)).Token;
        WorkProjects.Value(await weekends.SaveAsync(await weekends.SettingsAsync(Cancel) with { People = "2" }, Cancel));
        Assert.Equal(token, (await feeds.GetAsync(Cancel)).Token);
    }
}
