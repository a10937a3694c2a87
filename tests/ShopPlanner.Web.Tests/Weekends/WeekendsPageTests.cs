using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Web.Features.Weekends;

namespace ShopPlanner.Web.Tests.Weekends;

/// <summary>What happens when, on the page of a running program.</summary>
public sealed class WeekendsPageTests
{
    // A schedule is looked for, for two seconds at most; a busy machine takes its time to begin.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(45);

    [Fact]
    public async Task Work_is_shown_by_windows_and_a_task_that_is_put_off_moves()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var context = For(shop);
        Assert.True((await shop.Server.Get<IIdeaService>().BeginAsync("bookcase", "", CommandId.New(), ShopServer.Cancel)).Ok);
        var page = context.Render<WeekendsPage>();
        var first = page.WaitForElements(".weekend-card", Patience)[0];
        Assert.Contains("Cut the parts", first.TextContent, StringComparison.Ordinal);
        var put = page.FindAll("button")
            .First(button => button.GetAttribute("aria-label")?.StartsWith("Put off to", StringComparison.Ordinal) == true);
        var title = put.GetAttribute("aria-label")!.Split(": ", 2)[1];
        await put.ClickAsync();
        page.WaitForElement($"button[aria-label='As early as possible: {title}']", Patience);
    }

    [Fact]
    public async Task A_while_is_filled_and_the_schedule_is_kept()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var context = For(shop);
        var page = context.Render<WeekendsPage>();
        page.WaitForElements(".weekend-card", Patience);
        await page.FindAll("button").First(button => button.TextContent == "1 h").ClickAsync();
        var fits = page.WaitForElement("[aria-label='What fits into 1 h']", Patience);
        Assert.Contains("Cut the parts", fits.TextContent, StringComparison.Ordinal);
        await page.FindAll("button").First(button => button.TextContent == "Keep this schedule").ClickAsync();
        page.WaitForAssertion(
            () => Assert.Contains("This is the schedule you kept", page.Markup, StringComparison.Ordinal),
            Patience
        );
    }

    [Fact]
    public async Task Times_are_logged_and_estimates_say_from_how_many()
    {
        await using var shop = await PlannedShop.OpenAsync();
        using var context = For(shop);
        var work = shop.Server.Get<IWorkService>();
        var begun = await shop.Server.Get<IIdeaService>().BeginAsync("bookcase", "", CommandId.New(), ShopServer.Cancel);
        var project = begun.Value!.Id;
        var steps = (await work.GetAsync(project, ShopServer.Cancel))!.Steps;
        var done = steps.GroupBy(step => step.Step.Action).First(same => same.Count(step => step.Step.Minutes > 0) > 1).First();
        Assert.True((await work.MarkAsync(project, done.Step.Id, StepMark.Done, CommandId.New(), ShopServer.Cancel)).Ok);
        var page = context.Render<WeekendsPage>();
        page.WaitForElements(".weekend-card", Patience);
        var form = "form[aria-label$='time at the saw'] input";
        await page.Find(form).TypedAsync("soon");
        await page.Find("form[aria-label$='time at the saw']").PressAsync();
        Assert.Contains("write minutes, like 45", page.Find(".weekend-took .fault").TextContent, StringComparison.Ordinal);
        await page.Find(form).TypedAsync("1:10");
        await page.Find("form[aria-label$='time at the saw']").PressAsync();
        Assert.Equal(70, Assert.Single(await work.LogsAsync(ShopServer.Cancel)).Time.Took);
        await page.Find("div.weekend-took input").TypedAsync("9:00");
        Assert.Equal(2, (await work.LogsAsync(ShopServer.Cancel)).Length);
        page.WaitForAssertion(() => Assert.Contains("; from 1 log)", page.Markup, StringComparison.Ordinal), Patience);
    }

    private static BunitContext For(PlannedShop shop)
    {
        var context = PageTest.For(shop);
        context.Services.AddSingleton(shop.Server.Get<IWeekendService>());
        context.Services.AddSingleton(shop.Server.Get<IWorkService>());
        context.Services.AddSingleton(shop.Server.Get<IWeekendFeedService>());
        return context;
    }
}
