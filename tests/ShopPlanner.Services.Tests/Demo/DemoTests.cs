using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Core.Designs;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Demo;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Running;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Demo;

/// <summary>The demo is a true shop: furniture from designs, stores that sell what it needs, one project half cut.</summary>
public sealed class DemoTests : IAsyncLifetime
{
    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync(demo: true);

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task It_fills_an_empty_shop_without_a_fault()
    {
        var projects = await shop.Projects.ListAsync(cancel: TestShop.Cancel);
        Assert.Equal(["Plant stand", "Wall shelf", "Pantry cupboard", "Mudroom bench"], projects.Select(project => project.Name));
        Assert.All(projects, project => Assert.Equal(0, project.FaultyRows));
        Assert.All(projects, project => Assert.True(project.PartKinds > 0));
        Assert.Equal(["MB", "PC", "PS", "WS"], projects.Select(project => project.Code).Order());
        Assert.Equal(2, (await shop.Stores.ListAsync(TestShop.Cancel)).Count);
        Assert.Equal(4, (await shop.Stock.ListAsync(TestShop.Cancel)).Count(piece => piece.Place == StockPlace.Rack));
    }

    [Fact]
    public async Task Its_saws_are_those_of_a_small_shop_and_a_shop_with_its_own_keeps_them()
    {
        var saws = await shop.Shop.GetAsync(TestShop.Cancel);
        Assert.Equal(("30 in", true, true, "5 1/2 in"), (saws.WidestRip, saws.HasGuideSaw, saws.HasMiterSaw, saws.MiterCrosscut));
        await using var own = await TestShop.OpenAsync();
        var usual = await own.Shop.GetAsync(TestShop.Cancel);
        Assert.True((await own.Shop.SaveAsync(usual with { WidestRip = "24" }, TestShop.Cancel)).Ok);
        Assert.True((await own.Get<IDemoService>().LoadAsync(CommandId.New(), TestShop.Cancel)).Ok);
        var kept = await own.Shop.GetAsync(TestShop.Cancel);
        Assert.Equal(("24", false), (kept.WidestRip, kept.HasMiterSaw));
    }

    // The shelf's plywood and its rail come out of what the cupboard and the bench leave.
    [Fact]
    public async Task Planned_together_its_projects_cost_less_than_one_after_another()
    {
        await using var real = await TestShop.OpenAsync(
            demo: true,
            change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>()
        );
        var projects = (await real.Projects.ListAsync(cancel: TestShop.Cancel)).Where(one => one.Name != "Plant stand");
        var stores = (await real.Stores.ListAsync(TestShop.Cancel)).Select(store => store.Id);
        var order = new PlanOrder([.. projects.Select(one => one.Id).Reverse()], null, [.. stores], true, true, Seconds: 2, []);
        var started = await real.Plans.StartAsync(order, CommandId.New(), TestShop.Cancel);
        while (real.Plans.FindJob(started.Value!.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(20, TestShop.Cancel);
        var plan = real.Plans.FindJob(started.Value.Id)!;
        Assert.True(plan.State == PlanJobState.Done, string.Join("; ", plan.Faults));
        var compared = (await real.Get<IPlanTogether>().OfAsync(plan.PlanId!.Value, TestShop.Cancel))!;
        Assert.InRange(compared.AloneCost.Amount - plan.Cost!.Value.Amount, 5m, 100m);
    }

    [Fact]
    public async Task It_says_that_it_is_invented()
    {
        Assert.All(
            await shop.Projects.ListAsync(cancel: TestShop.Cancel),
            project => Assert.StartsWith("Demo: a made-up", project.Note, StringComparison.Ordinal)
        );
        Assert.All(
            await shop.Stores.ListAsync(TestShop.Cancel),
            store => Assert.StartsWith("Demo: a made-up", store.Note, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task Its_projects_come_from_designs_and_their_parts_are_those_of_the_idea()
    {
        foreach (var project in await shop.Projects.ListAsync(cancel: TestShop.Cancel))
        {
            Assert.True(project.HasIdea);
            var idea = (await shop.Get<IIdeaService>().GetAsync(project.Id, TestShop.Cancel))!.Idea;
            var piece = DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece!;
            var rows = (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows;
            Assert.Subset(piece.Parts.Select(part => part.Id).ToHashSet(), rows.Select(row => row.Texts.Mark).ToHashSet());
            var again = await shop.Get<IIdeaService>().MakePartsAsync(project.Id, false, CommandId.New(), TestShop.Cancel);
            Assert.Null(again.Value!.Step);
        }
    }

    [Fact]
    public async Task A_store_sells_every_material_that_its_projects_need()
    {
        var sold = (await shop.Stores.ListAsync(TestShop.Cancel))
            .SelectMany(store => store.Prices.Where(price => price.InStock))
            .Select(price => price.MaterialId)
            .ToHashSet();
        foreach (var project in await shop.Projects.ListAsync(cancel: TestShop.Cancel))
            Assert.All(
                (await shop.Parts.GetAsync(project.Id, TestShop.Cancel))!.Rows,
                row => Assert.Contains(row.Part!.Material, sold)
            );
    }

    [Fact]
    public async Task One_project_is_half_cut_and_what_was_left_is_in_the_bin()
    {
        var plan = Assert.Single(await shop.Plans.ListAsync(cancel: TestShop.Cancel));
        Assert.Equal(PlanState.Cutting, plan.State);
        var bench = (await shop.Bench.GetAsync(plan.Id, TestShop.Cancel))!;
        Assert.Equal(bench.Stocks.Length / 2, bench.Stocks.Count(stock => stock.Finished));
        Assert.Contains(bench.Stocks, stock => !stock.Finished && stock.Cuts.Any(cut => cut.Made));
        Assert.Contains(bench.Stocks, stock => stock.Cuts.Any(cut => !cut.Made));
        var bin = (await shop.Stock.ListAsync(TestShop.Cancel)).Select(piece => piece.Tag).ToHashSet();
        Assert.All(bench.Stocks.SelectMany(stock => stock.Binned), piece => Assert.Contains(piece.Tag, bin));
        Assert.All(
            bench.Stocks.Where(stock => stock.Finished && stock.Stock.Tag is not null),
            stock => Assert.DoesNotContain(stock.Stock.Tag!, bin)
        );
    }

    [Fact]
    public async Task Where_its_projects_stand_is_told_by_their_cuts()
    {
        var projects = (await shop.Projects.ListAsync(cancel: TestShop.Cancel)).ToDictionary(
            one => one.Name,
            one => one.Standing
        );
        Assert.Equal(ProjectStanding.New, projects["Mudroom bench"]);
        Assert.Equal(ProjectStanding.New, projects["Pantry cupboard"]);
        var plan = Assert.Single(await shop.Plans.ListAsync(cancel: TestShop.Cancel));
        var stocks = (await shop.Bench.GetAsync(plan.Id, TestShop.Cancel))!.Stocks;
        var cuts = stocks.SelectMany(stock => stock.Cuts).ToList();
        var half = new CutProgress(cuts.Count(cut => cut.Made), cuts.Count, stocks.Length / 2, stocks.Length);
        Assert.InRange(half.CutsMade, 1, half.Cuts - 1);
        Assert.Equal(half, plan.Progress);
        Assert.Equal(new(ProjectState.Cutting, ProjectState.Cutting, half), projects["Plant stand"]);
    }

    [Fact]
    public async Task It_is_loaded_into_an_empty_shop_and_into_no_other()
    {
        await using var empty = await TestShop.OpenAsync();
        var demo = empty.Get<IDemoService>();
        Assert.True(await demo.CanLoadAsync(TestShop.Cancel));
        Assert.True((await demo.LoadAsync(CommandId.New(), TestShop.Cancel)).Ok);
        Assert.Equal(shop.CountRows()["Parts"], empty.CountRows()["Parts"]);
        Assert.False(await demo.CanLoadAsync(TestShop.Cancel));
        var rows = empty.CountRows();
        Assert.Equal("demo", Assert.Single((await demo.LoadAsync(CommandId.New(), TestShop.Cancel)).Faults).Field);
        Assert.Equal(rows, empty.CountRows());
    }

    [Fact]
    public async Task It_leaves_a_shop_in_use_alone()
    {
        var folder = TestShop.NewFolder();
        await using (var used = await TestShop.OpenAsync(folder: folder))
            await Some.ProjectAsync(used, "My own");
        await using (var again = await TestShop.OpenAsync(demo: true, folder: folder))
            Assert.Equal(["My own"], (await again.Projects.ListAsync(cancel: TestShop.Cancel)).Select(project => project.Name));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task The_real_planner_cuts_all_three_pieces_and_a_packet_is_printed()
    {
        await using var real = await TestShop.OpenAsync(
            demo: true,
            change: services => services.AddSingleton<ICutPlanner, ShopCutPlanner>()
        );
        var projects = (await real.Projects.ListAsync(cancel: TestShop.Cancel)).Select(project => project.Id);
        var stores = (await real.Stores.ListAsync(TestShop.Cancel)).Select(store => store.Id);
        var job = (
            await real.Plans.StartAsync(
                new PlanOrder([.. projects], null, [.. stores], true, true, 3, []),
                CommandId.New(),
                TestShop.Cancel
            )
        ).Value!;
        while (real.Plans.FindJob(job.Id) is { State: PlanJobState.Waiting or PlanJobState.Running })
            await Task.Delay(20, TestShop.Cancel);
        var end = real.Plans.FindJob(job.Id)!;
        Assert.True(end.State == PlanJobState.Done, string.Join("; ", end.Faults));
        var plan = (await real.Plans.GetAsync(end.PlanId!.Value, TestShop.Cancel))!;
        Assert.Empty(plan.Plan.Unplaced);
        Assert.NotEmpty(
            (await real.Plans.PacketAsync(plan.Summary.Id, Services.Common.PaperSize.Letter, cancel: TestShop.Cancel))!
        );
        Assert.NotEmpty(
            (await real.Bench.GetAsync(plan.Summary.Id, TestShop.Cancel))!.Stocks.Select(stock =>
                PlanPictures.ForLayout(plan, stock.Layout)
            )
        );
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{plan.Summary.Cost} (bound {plan.Plan.CostLowerBound}), {plan.Summary.Stocks} boards and sheets, {plan.Summary.Status}"
        );
        foreach (var buy in plan.Plan.Buy)
            TestContext.Current.TestOutputHelper!.WriteLine(
                $"{buy.Quantity} of {plan.Stocks[buy.Stock].Name} at {plan.Stocks[buy.Stock].Store}"
            );
    }
}
