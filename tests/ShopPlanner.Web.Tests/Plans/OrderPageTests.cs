using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Plans;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>Choosing what to plan.</summary>
public sealed class OrderPageTests
{
    private const string Start = "Plan the cuts";

    [Fact]
    public async Task Everything_is_ticked_to_begin_with_and_counted()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);

        var page = context.Render<NewPlanPage>();

        page.WaitForAssertion(() => Assert.Contains("2 pieces of 1 part from 1 material.", page.Markup));
        var boxes = page.FindAll("input[type=checkbox]")
            .ToLookup(box => box.GetAttribute("data-field")!.StartsWith("spare ", StringComparison.Ordinal));
        Assert.All(boxes[false], box => Assert.True(box.HasAttribute("checked")));
        Assert.All(boxes[true], box => Assert.False(box.HasAttribute("checked")));
    }

    [Fact]
    public async Task Spare_parts_alone_are_no_plan_and_a_worth_is_read_as_money()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var page = context.Render<NewPlanPage>();
        page.WaitForElement("[data-field^='spare ']").Typed("true");
        page.WaitForAssertion(() => Assert.Contains("are all spare parts", page.Markup));
        page.WaitForElement("[data-field^='worth ']").Typed("a lot");
        page.WaitForAssertion(() => Assert.Contains("is not a price", page.Markup));
    }

    [Fact]
    public async Task A_project_without_parts_is_named_and_not_ticked()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await shop
            .Server.Get<IProjectService>()
            .CreateAsync("Gate", Core.Measures.LengthUnit.Inch, CommandId.New(), ShopServer.Cancel);
        await using var context = PageTest.For(shop);

        var page = context.Render<NewPlanPage>();

        page.WaitForAssertion(() => Assert.Contains("2 pieces of 1 part from 1 material.", page.Markup));
        Assert.Contains(
            page.FindAll(".order-project p"),
            one => one.TextContent.StartsWith("Gate — no parts yet", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task What_is_cut_is_left_out_unless_it_is_to_be_cut_again()
    {
        await using var shop = await PlannedShop.OpenAsync();
        var plan = await shop.PlanAsync();
        var bench = shop.Server.Get<Services.Bench.IBenchService>();
        foreach (var cut in (await shop.BoardAsync(plan)).Cuts.Where(cut => cut.Cut.FirstPart is not null).Take(1))
            await bench.SetCutAsync(plan, 0, 1, cut.Cut.N, true, "test", CommandId.New(), ShopServer.Cancel);
        await using var context = PageTest.For(shop);

        var page = Open(context, Links.NewPlan([shop.Project.Id]));
        page.WaitForAssertion(() => Assert.Contains("1 piece is already cut and left out.", page.Markup));
        page.FindAll("label")
            .Single(label => label.TextContent.Contains("Cut these pieces again"))
            .QuerySelector("input")!
            .Typed("true");
        page.WaitForAssertion(() => Assert.Contains("2 pieces of 1 part", page.Markup));
    }

    [Fact]
    public async Task A_row_that_cannot_be_read_is_left_out_by_name()
    {
        await using var shop = await PlannedShop.OpenAsync();
        var bad = new PartTexts(Guid.CreateVersion7(), "B", "Rail", "pine-1x3", "12 1/0", "", "1", false, "");
        Assert.True(
            (await shop.Server.Get<IPartService>().SaveAsync(shop.Project.Id, [new PartEdit(bad, null)], ShopServer.Cancel)).Ok
        );
        await using var context = PageTest.For(shop);

        var page = context.Render<NewPlanPage>();

        page.WaitForAssertion(() => Assert.Contains("12 1/0", page.Find(".notice.warn").TextContent));
        Assert.Contains("2 pieces of 1 part", page.Markup);
    }

    [Fact]
    public async Task With_every_row_ticked_off_it_cannot_start()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var page = context.Render<NewPlanPage>();
        page.WaitForAssertion(() => Assert.False(Button(page).HasAttribute("disabled")));

        page.Find(".order-rows input").Typed("false");

        page.WaitForAssertion(() => Assert.True(Button(page).HasAttribute("disabled")));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("soon")]
    public async Task A_time_that_is_none_is_told_beside_its_field(string typed)
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var page = context.Render<NewPlanPage>();
        page.WaitForElement("input[inputmode=numeric]").Typed(typed);

        page.WaitForAssertion(() => Assert.Equal("true", page.Find("input[inputmode=numeric]").GetAttribute("aria-invalid")));
        Assert.Equal(typed, page.Find("input[inputmode=numeric]").GetAttribute("data-shown"));
    }

    [Fact]
    public async Task Started_it_goes_to_the_run_and_a_run_that_is_done_to_its_plan()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = PageTest.For(shop);
        var page = context.Render<NewPlanPage>();
        page.WaitForAssertion(() => Assert.False(Button(page).HasAttribute("disabled")));

        await Button(page).PressAsync();

        var addresses = context.Services.GetRequiredService<NavigationManager>();
        page.WaitForAssertion(() => Assert.Contains("/plans/runs/", addresses.Uri));
        var job = Guid.Parse(addresses.Uri.Split('/')[^1]);
        while (shop.Server.Get<IPlanService>().FindJob(job)!.PlanId is null)
            await Task.Delay(10, ShopServer.Cancel);
        context.Render<PlanRunPage>(given => given.Add(run => run.Id, job));
        page.WaitForAssertion(() =>
            Assert.EndsWith(Links.Plan(shop.Server.Get<IPlanService>().FindJob(job)!.PlanId!.Value), addresses.Uri)
        );
    }

    private static IRenderedComponent<NewPlanPage> Open(BunitContext context, string address)
    {
        context.Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        return context.Render<NewPlanPage>();
    }

    private static IElement Button(IRenderedComponent<NewPlanPage> page) =>
        page.FindAll("button").Single(button => button.TextContent.Trim() == Start);
}
