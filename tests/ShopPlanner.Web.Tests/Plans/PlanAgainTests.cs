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

/// <summary>Planning what has a plan already: the new plan takes its place, unless the earlier one is kept.</summary>
public sealed class PlanAgainTests : IAsyncLifetime
{
    private PlannedShop shop = null!;
    private BunitContext context = null!;

    public async ValueTask InitializeAsync()
    {
        shop = await PlannedShop.OpenAsync();
        context = PageTest.For(shop);
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task The_new_plan_takes_the_place_of_the_earlier_one()
    {
        var plan = await shop.PlanAsync();
        var page = Open(Links.NewPlan([shop.Project.Id]));
        page.WaitForAssertion(() => Assert.Contains("already has a plan: ready to cut", Notice(page).TextContent));
        Assert.Contains("The new plan takes its place", Notice(page).TextContent);

        await StartAsync(page);

        Assert.Equal(PlanState.Withdrawn, (await ReadAsync(plan)).Summary.State);
    }

    [Fact]
    public async Task Kept_it_stays_beside_the_new_one()
    {
        var plan = await shop.PlanAsync();
        var page = Open(Links.NewPlan([shop.Project.Id]));
        page.WaitForElement(".notice input[type=checkbox]").Typed("true");
        page.WaitForAssertion(() => Assert.Contains("buy and cut the same parts twice", Notice(page).TextContent));

        await StartAsync(page);

        Assert.Equal(PlanState.Ready, (await ReadAsync(plan)).Summary.State);
        Assert.Equal(2, (await shop.Server.Get<IPlanService>().ListAsync(cancel: ShopServer.Cancel)).Count);
    }

    [Fact]
    public async Task Opened_without_a_choice_it_leaves_projects_with_a_plan_alone()
    {
        await shop.PlanAsync();
        var stand = await shop.AddAsync("Plant stand");
        var page = Open(Links.NewPlan());
        page.WaitForAssertion(() => Assert.Contains("1 piece of 1 part", page.Markup));
        Assert.Empty(page.FindAll(".notice"));
        var ticked = page.FindAll("[data-field]").Where(field => field.HasAttribute("checked")).Select(Field).ToList();
        Assert.Contains($"project {stand.Id:N}", ticked);
        Assert.DoesNotContain($"project {shop.Project.Id:N}", ticked);
    }

    [Fact]
    public async Task A_board_that_is_started_holds_the_plan_until_the_person_decides()
    {
        var plan = await shop.PlanAsync();
        await shop.TickAsync(plan);
        var page = Open(Links.NewPlan([shop.Project.Id], plan));
        page.WaitForAssertion(() => Assert.Contains("It can't be replaced now.", Notice(page).TextContent));
        Assert.Contains("is started: finish it at the bench, or undo its cuts", Notice(page).TextContent);
        Assert.Equal("Plan the rest", page.Find("h1").TextContent);

        await Button(page).PressAsync();
        page.WaitForAssertion(() => Assert.Contains("choose at the top what happens to it", page.Markup));
        Assert.DoesNotContain("/runs/", Address);

        page.Find(".notice input[type=checkbox]").Typed("true");
        await StartAsync(page);
    }

    [Fact]
    public async Task A_plan_for_further_projects_gives_way_when_those_are_added()
    {
        var stand = await shop.AddAsync("Plant stand");
        var both = await shop.PlanAsync(shop.Order() with { Projects = [shop.Project.Id, stand.Id] });
        var page = Open(Links.NewPlan([shop.Project.Id]));
        page.WaitForAssertion(() => Assert.Contains("It covers Plant stand too", Notice(page).TextContent));

        page.FindAll("button").Single(button => button.TextContent == "Add Plant stand").Click();
        page.WaitForAssertion(() => Assert.Contains("The new plan takes its place", Notice(page).TextContent));
        await StartAsync(page);

        Assert.Equal(PlanState.Withdrawn, (await ReadAsync(both)).Summary.State);
    }

    [Fact]
    public async Task A_plan_for_other_rows_stays()
    {
        var parts = shop.Server.Get<IPartService>();
        var rail = new PartTexts(Guid.CreateVersion7(), "B", "Rail", "pine-1x3", "12", "", "1", false, "");
        await parts.SaveAsync(shop.Project.Id, [new PartEdit(rail, null)], ShopServer.Cancel);
        var plan = await shop.PlanAsync(shop.Order() with { Parts = [rail.Id] });
        var page = Open(Links.NewPlan([shop.Project.Id]));
        page.WaitForAssertion(() => Assert.Contains("The new plan takes its place", Notice(page).TextContent));

        page.FindAll(".order-rows input").Single(row => Field(row) == $"row {rail.Id:N}").Typed("false");

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".notice")));
        await StartAsync(page);
        Assert.Equal(PlanState.Ready, (await ReadAsync(plan)).Summary.State);
    }

    [Fact]
    public async Task Rows_of_the_earlier_plan_that_are_not_chosen_are_named()
    {
        var parts = shop.Server.Get<IPartService>();
        var rail = new PartTexts(Guid.CreateVersion7(), "B", "Rail", "pine-1x3", "12", "", "1", false, "");
        await parts.SaveAsync(shop.Project.Id, [new PartEdit(rail, null)], ShopServer.Cancel);
        await shop.PlanAsync();
        var page = Open(Links.NewPlan([shop.Project.Id]));
        page.WaitForElement(".order-rows");

        page.FindAll(".order-rows input").Single(row => Field(row) == $"row {rail.Id:N}").Typed("false");

        page.WaitForAssertion(() => Assert.Contains("Not chosen here: B Rail.", Notice(page).TextContent));
    }

    [Fact]
    public async Task The_form_begins_as_the_plan_was_ordered()
    {
        var plan = await shop.PlanAsync(shop.Order() with { UseRack = false, Seconds = 2 });
        await shop.AddAsync("Plant stand");
        var page = Open(Links.NewPlan([shop.Project.Id], plan));
        page.WaitForAssertion(() => Assert.Contains("2 pieces of 1 part", page.Markup));

        var ticked = page.FindAll("[data-field]").Where(field => field.HasAttribute("checked")).Select(Field).ToList();
        Assert.Equal(
            [$"project {shop.Project.Id:N}", "bin", $"store {shop.Store.Id:N}"],
            ticked.Where(key => !key!.StartsWith("row ", StringComparison.Ordinal))
        );
        Assert.Equal("2", page.Find("input[inputmode=numeric]").GetAttribute("value"));
        Assert.False(Button(page).HasAttribute("disabled"));
    }

    [Fact]
    public void What_is_gone_since_does_not_come_back_with_the_order()
    {
        var (gone, store, other) = (Guid.NewGuid(), Guid.NewGuid(), Guid.NewGuid());
        var draft = new OrderDraft();
        draft.Begin(
            new PlanOrder([gone], null, [store, other], UseRack: true, UseBin: true, Seconds: 3, []),
            new Dictionary<Guid, PartSheet>(),
            [other]
        );
        Assert.Equal((false, false, true), (draft.HasProject(gone), draft.HasStore(store), draft.HasStore(other)));
    }

    [Fact]
    public async Task A_plan_that_is_all_cut_with_a_piece_lost_begins_the_form_and_stays()
    {
        var plan = await shop.PlanAsync();
        await shop.TickAsync(plan);
        await shop.FinishAsync(plan, allCutsMade: false);
        var page = Open(Links.NewPlan([shop.Project.Id], plan));
        page.WaitForAssertion(() => Assert.Equal("Plan the rest", page.Find("h1").TextContent));
        Assert.Empty(page.FindAll(".notice"));

        await StartAsync(page);

        Assert.Equal(PlanState.Cut, (await ReadAsync(plan)).Summary.State);
    }

    private string Address => context.Services.GetRequiredService<NavigationManager>().Uri;

    private static string? Field(IElement field) => field.GetAttribute("data-field");

    private static IElement Notice(IRenderedComponent<NewPlanPage> page) => page.Find(".notice");

    private static IElement Button(IRenderedComponent<NewPlanPage> page) => page.Find("button[type=submit]");

    private async Task<PlanView> ReadAsync(Guid plan) =>
        (await shop.Server.Get<IPlanService>().GetAsync(plan, ShopServer.Cancel))!;

    private IRenderedComponent<NewPlanPage> Open(string address)
    {
        context.Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        return context.Render<NewPlanPage>();
    }

    // Until the plan is stored.
    private async Task StartAsync(IRenderedComponent<NewPlanPage> page)
    {
        await Button(page).PressAsync();
        page.WaitForAssertion(() => Assert.Contains("/plans/runs/", Address));
        var (plans, job) = (shop.Server.Get<IPlanService>(), Guid.Parse(Address.Split('/')[^1]));
        while (plans.FindJob(job) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(10, ShopServer.Cancel);
        Assert.True(plans.FindJob(job)!.State == PlanJobState.Done, string.Join("; ", plans.FindJob(job)!.Faults));
    }
}
